namespace ShopJobs.Domain.Logbook;

/// <summary>Whose logbook it is: a car's, a torque tool's, or the shop's own.</summary>
public enum LogbookKind
{
    /// <summary>One per car; every joint of the car is in it.</summary>
    Car,

    /// <summary>One per torque tool: calibration, quarantine, doubt, cleared.</summary>
    Tool,

    /// <summary>One per shop: restores and daily heads.</summary>
    Shop,
}
