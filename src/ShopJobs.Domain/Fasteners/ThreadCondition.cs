namespace ShopJobs.Domain.Fasteners;

/// <summary>The state of the threads and faces that a torque assumes.</summary>
public enum ThreadCondition
{
    /// <summary>Clean, no lubricant.</summary>
    Dry,

    /// <summary>Oil on threads and faces.</summary>
    Oiled,

    /// <summary>Thread-locker already on the fastener as supplied; none is added.</summary>
    PreAppliedLocker,

    /// <summary>Liquid thread-locker put on in the shop.</summary>
    Locker,

    /// <summary>Anti-seize paste.</summary>
    AntiSeize,
}
