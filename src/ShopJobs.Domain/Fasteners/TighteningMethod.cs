namespace ShopJobs.Domain.Fasteners;

/// <summary>How a joint is brought to its clamp load.</summary>
public enum TighteningMethod
{
    /// <summary>Bolt stretch measured, by ultrasound or gauge.</summary>
    Elongation,

    /// <summary>Tightened into yield, by gradient or angle.</summary>
    YieldOrAngle,

    /// <summary>Stretched by hydraulic tensioner.</summary>
    HydraulicTensioner,

    /// <summary>Torque wrench, friction known from tests on the joint.</summary>
    TorqueFrictionKnown,

    /// <summary>Torque wrench, friction estimated.</summary>
    TorqueFrictionEstimated,

    /// <summary>Impact wrench.</summary>
    Impact,
}
