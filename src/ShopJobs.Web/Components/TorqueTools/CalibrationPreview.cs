using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>What a calibration will do once it is entered, told before it is.</summary>
/// <param name="Doubts">It puts earlier work in doubt.</param>
/// <param name="Lines">What follows from it.</param>
/// <param name="Cautions">What looks odd and may still be right.</param>
public sealed record CalibrationPreview(bool Doubts, IReadOnlyList<string> Lines, IReadOnlyList<string> Cautions)
{
    private const decimal SlipWithinPercent = 3;

    /// <summary>From the tool's own fold, with the calibration as its next entry.</summary>
    public static CalibrationPreview Of(ToolState state, Calibration calibration, DateTime now)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(calibration);
        var after = state.Apply(new Recorded(state.Number + 1, now, default, new Calibrated(
            calibration.Date, calibration.Due, calibration.Certificate, calibration.AsFound, calibration.AsLeft)));
        var entered = after.Calibrations[^1];
        var doubts = after.Doubts.Count > state.Doubts.Count;
        var from = state.LastGood is { } good ? good.Date.Day() : "its first use";
        string[] lines =
        [
            entered.Left switch
            {
                true => $"Left good: it may be used until {calibration.Due.Day()}, that day included.",
                false => "Left outside its limit: it is out of use.",
                null => "No reading as left: it is out of use until it is calibrated.",
            },
            entered.Found switch
            {
                true => "Found good.",
                false => $"Found outside its limit: every position it tightened since {from} is in doubt, on every car, from this entry on.",
                null => "No reading as found: nothing is said about the work since the last calibration.",
            },
        ];
        return new CalibrationPreview(doubts, lines, [.. CautionsOn(state.Tool!, calibration)]);
    }

    private static IEnumerable<string> CautionsOn(TorqueTool tool, Calibration calibration)
    {
        if (calibration.AsLeft.Count > 0)
        {
            foreach (var end in new[] { tool.LowestMarked, tool.Top }.Where(end => calibration.AsLeft.All(point => point.SetOrShown != end)))
            {
                yield return $"No reading as left at {TypedNumber.Plain(end)} {tool.Unit.Symbol()}: outside the points its error is unknown.";
            }
        }

        foreach (var point in calibration.AsFound.Concat(calibration.AsLeft).Distinct())
        {
            foreach (var other in Enum.GetValues<TorqueUnit>().Where(unit => unit != tool.Unit && IsSlip(point, tool.Unit, unit)))
            {
                yield return $"Rig read {TypedNumber.Plain(point.RigRead)} at {TypedNumber.Plain(point.SetOrShown)}: that is {TypedNumber.Plain(point.SetOrShown)} {tool.Unit.Symbol()} written in {other.Symbol()}. Is the certificate in {tool.Unit.Symbol()}?";
            }
        }
    }

    private static bool IsSlip(CalibrationPoint point, TorqueUnit unit, TorqueUnit other)
    {
        var inOther = point.SetOrShown * unit.NewtonMetresPerUnit() / other.NewtonMetresPerUnit();
        return Math.Abs(point.RigRead - inOther) / inOther * 100 <= SlipWithinPercent;
    }
}
