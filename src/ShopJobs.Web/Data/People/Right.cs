namespace ShopJobs.Web.Data.People;

/// <summary>What a person may do, dated. A right is asked for, never a role name.</summary>
public enum Right
{
    /// <summary>Record torque and the facts of the work.</summary>
    Record,

    /// <summary>Check another person's joint.</summary>
    Witness,

    /// <summary>Write and publish procedures.</summary>
    Author,

    /// <summary>Decide what happens with what is held.</summary>
    Decide,

    /// <summary>Release a car to move, to road, to track.</summary>
    Release,

    /// <summary>Look after people, tablets, customers, cars and tools.</summary>
    Lead,
}
