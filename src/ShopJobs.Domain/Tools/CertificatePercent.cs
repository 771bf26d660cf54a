namespace ShopJobs.Domain.Tools;

/// <summary>A percent from a certificate becomes a pair only with its definition chosen; show it back in words to be confirmed.</summary>
public static class CertificatePercent
{
    /// <summary>The pair behind a percent at a set or shown value (above zero). The percent must leave a rig reading above zero.</summary>
    public static CalibrationPoint ToPoint(decimal setOrShown, decimal percent, PercentDefinition definition) => definition switch
    {
        PercentDefinition.Deviation when percent > -100 => new CalibrationPoint(setOrShown, setOrShown / (1 + (percent / 100))),
        PercentDefinition.Delivered when percent > -100 => new CalibrationPoint(setOrShown, setOrShown * (1 + (percent / 100))),
        _ => throw new ArgumentOutOfRangeException(nameof(percent), percent, "The percent and its definition leave no torque."),
    };
}
