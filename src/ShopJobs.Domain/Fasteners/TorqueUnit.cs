namespace ShopJobs.Domain.Fasteners;

/// <summary>The units in which a torque may be stated or typed.</summary>
public enum TorqueUnit
{
    /// <summary>N·m, the unit in which torques are compared.</summary>
    NewtonMetre,

    /// <summary>lbf·ft, also written ft-lb or lb-ft.</summary>
    PoundForceFoot,

    /// <summary>lbf·in, also written in-lb or lb-in.</summary>
    PoundForceInch,

    /// <summary>kgf·m, also written kgm or mkg.</summary>
    KilogramForceMetre,
}
