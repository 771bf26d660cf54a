namespace ShopJobs.Domain.Fasteners;

/// <summary>How a stated torque compares with the run-down torque of a self-locking nut.</summary>
public enum RunDown
{
    /// <summary>The instruction does not say.</summary>
    NotStated,

    /// <summary>The stated torque includes the run-down torque.</summary>
    Includes,

    /// <summary>The run-down torque measured on the way down is added to the stated torque.</summary>
    Add,
}
