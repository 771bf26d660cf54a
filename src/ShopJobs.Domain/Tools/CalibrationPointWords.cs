using System.Globalization;

namespace ShopJobs.Domain.Tools;

/// <summary>What a calibration point says, for people: the sign of a bare percent is read either way.</summary>
public static class CalibrationPointWords
{
    /// <summary>Deviation by ISO 6789 with its sign, one decimal, for example "+9.9 %".</summary>
    public static string DeviationText(this CalibrationPoint point) =>
        Math.Round(point.DeviationPercent, 1, MidpointRounding.AwayFromZero).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>What the tool delivers, in percent of what was set, for example "delivers 9 % too little".</summary>
    public static string Words(this CalibrationPoint point)
    {
        var percent = Math.Round(point.DeliveredPercent, 1, MidpointRounding.AwayFromZero);
        var size = Math.Abs(percent).ToString("0.#", CultureInfo.InvariantCulture);
        return percent switch
        {
            < 0 => $"delivers {size} % too little",
            > 0 => $"delivers {size} % too much",
            _ => "delivers what is set",
        };
    }
}
