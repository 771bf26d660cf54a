namespace ShopJobs.Domain.Fasteners;

/// <summary>How a limit is rounded when it is shown in another unit: always towards the inside of its range.</summary>
public enum LimitRounding
{
    /// <summary>For a minimum: never shown lower than it is.</summary>
    Up,

    /// <summary>For a maximum: never shown higher than it is.</summary>
    Down,
}
