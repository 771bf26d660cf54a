using System.Globalization;
using System.Text;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>What is shown when a command on a tool is signed.</summary>
internal static class ToolDialogs
{
    /// <summary>A calibration: the certificate, its readings and what they do.</summary>
    /// <param name="command">The same on each retry.</param>
    public static ToSign<SignedToolCommand> ToCalibrate(ToolLine line, Calibration calibration, CalibrationPreview preview, CommandId command) => new(
        new SignRequest(
            "SIGN: copied from the certificate by me",
            $"Calibration of {line.Tool.Name}, serial {line.Tool.Serial}",
            [
                $"Certificate {calibration.Certificate}, {calibration.Date.Day()}, good to {calibration.Due.Day()}",
                .. calibration.AsFound.Select(point => $"As found: {PointWords(line.Tool, point)}"),
                .. calibration.AsLeft.Select(point => $"As left: {PointWords(line.Tool, point)}"),
                .. preview.Lines,
                .. preview.Cautions.Select(caution => $"Look again: {caution}"),
            ],
            command)
        { Needs = Right.Lead },
        shown => new Calibrate(calibration, shown, line.State.Number));

    /// <summary>A clearing: what it lifts, and how the tool was found good.</summary>
    public static ToSign<SignedToolCommand> ToClear(ToolState state, string reason, Func<DateTime, DateTime> onTheWall)
    {
        var text = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        return new ToSign<SignedToolCommand>(
            new SignRequest(
                "CLEAR: found good by me",
                $"Clear {state.Name}{(state.Tool?.Serial ?? state.Instrument?.Serial) switch { { Length: > 0 } serial => $", serial {serial}", _ => "" }}",
                [
                    .. state.Doubts.Select(doubt => $"Lifts {DoubtWords(doubt, onTheWall)}"),
                    .. state.OutOfUseBy == 0 ? Array.Empty<string>() : [string.Create(CultureInfo.InvariantCulture, $"Back in use; out of use since entry {state.OutOfUseBy}")],
                    $"How it was found good: {reason}",
                ],
                new CommandId(Guid.NewGuid()))
            { Needs = Right.Lead },
            shown => new ClearTool(text.Digest, shown, state.Number),
            text);
    }

    /// <summary>A withdrawal: which calibration, and what follows from it.</summary>
    public static ToSign<SignedToolCommand> ToWithdraw(ToolState state, CalibrationBook book, string reason)
    {
        var text = NewContent.Of(Encoding.UTF8.GetBytes(reason));
        var before = state.Calibrations.FindLast(other => other.Number != book.Number && other is { Left: true, WithdrawnBy: 0 });
        return new ToSign<SignedToolCommand>(
            new SignRequest(
                "WITHDRAW: entered by mistake",
                $"Withdraw a calibration of {state.Name}",
                [
                    $"Certificate {book.Fact.Certificate}, {book.Fact.Date.Day()}, good to {book.Fact.Due.Day()}",
                    $"{state.Name} is out of use until the next calibration",
                    .. book.Left == true ? [$"Everything done with it since {book.Fact.Date.Day()} is in doubt, on every car, until it is cleared"] : Array.Empty<string>(),
                    before is null ? "No other good calibration is entered" : $"The calibration of {before.Fact.Date.Day()} is the last good one again",
                    $"Why: {reason}",
                ],
                new CommandId(Guid.NewGuid()))
            { Needs = Right.Lead },
            shown => new WithdrawCalibration(book.Number, text.Digest, shown, state.Number),
            text);
    }

    private static string DoubtWords(DoubtRaised doubt, Func<DateTime, DateTime> onTheWall) => string.Create(
        CultureInfo.InvariantCulture,
        $"the doubt of entry {doubt.Number}, raised {(doubt.ByReadings ? "by readings as found" : doubt.Raised is CalibrationWithdrawn ? "by a calibration withdrawn" : "by somebody's word")}: work from {doubt.From?.Day() ?? "its first use"} to {WallTime.Minute(onTheWall(doubt.Until))}");

    private static string PointWords(TorqueTool tool, CalibrationPoint point) =>
        $"{(tool.Kind == ToolKind.Click ? "set" : "shown")} {TypedNumber.Plain(point.SetOrShown)}, rig read {TypedNumber.Plain(point.RigRead)} {tool.Unit.Symbol()}, {point.DeviationText()}";
}
