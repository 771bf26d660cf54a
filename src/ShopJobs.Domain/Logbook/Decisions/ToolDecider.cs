using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Decides what a command on a tool becomes. Pure.</summary>
public static class ToolDecider
{
    /// <summary>Decides one command on one tool. Taking a tool out of use is a report and never refused.</summary>
    /// <param name="state">The tool's state.</param>
    /// <param name="tool">The tool's id.</param>
    /// <param name="command">What is asked.</param>
    /// <param name="rights">Rights of the actor.</param>
    /// <param name="today">The shop's date: a calibration is not of tomorrow.</param>
    public static Verdict Decide(this ToolState state, ToolId tool, ToolCommand command, IReadOnlySet<Right> rights, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(rights);
        if (command is not (EnterTool or Quarantine) && state.Tool is null)
        {
            return Refuse(HoldReason.ToolUnknown, "This tool is not entered yet", "enter its range and graduation first");
        }

        if (command is not Quarantine && !rights.Contains(Right.Lead))
        {
            return Refuse(HoldReason.NoRight, "Only the lead enters tools, calibrations and doubts", "ask the lead");
        }

        return command switch
        {
            EnterTool enter when !state.Calibrations.IsEmpty && enter.Tool.Unit != state.Tool!.Unit => Refuse(
                HoldReason.ToolOutOfRange, $"{state.Tool.Name} has calibrations in {state.Tool.Unit.Symbol()}", "enter a tool in another unit as a new tool"),
            EnterTool enter => Accept(new ToolEntered(
                tool, enter.Tool.Name, enter.Tool.Serial, enter.Tool.Kind, enter.Tool.Unit, enter.Tool.LowestMarked, enter.Tool.Top,
                enter.Tool.Graduation, enter.Tool.ClassDeviationPercent)),
            Calibrate { Calibration: var calibration } => Calibrated(state, calibration, today),
            Quarantine quarantine => Accept(new Quarantined(quarantine.Reason)),
            RaiseDoubt doubt => Accept(new Doubted(doubt.Reason)),
            ClearTool when state.Doubts.IsEmpty && state.OutOfUseBy == 0 =>
                Refuse(HoldReason.NothingToDecide, "This tool is neither in doubt nor out of use", "use it"),
            ClearTool clear => Accept(new Cleared([.. state.Doubts.Select(doubt => doubt.Number)], clear.Reason)),
            _ => throw new ArgumentOutOfRangeException(nameof(command), command?.GetType().Name, "Not a command on a tool."),
        };
    }

    private static Verdict Calibrated(ToolState state, Calibration calibration, DateOnly today) =>
        calibration.Date > today
            ? Refuse(HoldReason.ValueOutside, $"The calibration is dated {calibration.Date:yyyy-MM-dd}, after today", "read the certificate's date again")
            : state.LastGood is { } last && calibration.Date < last.Date
                ? Refuse(HoldReason.ValueOutside, $"A calibration of {last.Date:yyyy-MM-dd} is entered already", "enter the newest certificate")
                : Accept(new Calibrated(calibration.Date, calibration.Due, calibration.Certificate, calibration.AsFound, calibration.AsLeft));

    private static Verdict Accept(Entry entry) => new Verdict.Accepted([entry]);

    private static Verdict Refuse(HoldReason reason, string words, string next) =>
        new Verdict.Refused([new HoldPoint(reason, null, null, null, words, next)]);
}
