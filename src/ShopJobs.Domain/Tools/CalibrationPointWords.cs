using System.Globalization;

namespace ShopJobs.Domain.Tools;

/// <summary>What a calibration point says, for people: the sign of a bare percent is read either way.</summary>
public static class CalibrationPointWords
{
    /// <summary>Deviation by ISO 6789 with its sign, one decimal, for example "+9.9 %".</summary>
    public static string DeviationText(this CalibrationPoint point) =>
        Math.Round(point.DeviationPercent, 1, MidpointRounding.AwayFromZero).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>Which way it is off, beside a deviation: "delivers too little".</summary>
    public static string Words(this CalibrationPoint point) => Math.Sign(Math.Round(point.DeliveredPercent, 1, MidpointRounding.AwayFromZero)) switch
    {
        < 0 => "delivers too little",
        > 0 => "delivers too much",
        _ => "delivers what is set",
    };
}
