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
    /// <param name="hasUsed">True when the actor used the tool in the time that a doubt covers.</param>
    public static Verdict Decide(
        this ToolState state, ToolId tool, ToolCommand command, IReadOnlySet<Right> rights, DateOnly today, Func<DoubtRaised, bool> hasUsed)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(rights);
        ArgumentNullException.ThrowIfNull(hasUsed);
        if (command is SignedToolCommand signed && signed.AsOf != state.Number)
        {
            return Refuse(new HoldPoint(HoldReason.LookAgain) { Entry = state.Number });
        }

        if (command is not (EnterTool or EnterInstrument or Quarantine) && state.Tool is null && state.Instrument is null)
        {
            return Refuse(new HoldPoint(HoldReason.ToolNotEntered));
        }

        if (command is not Quarantine && !rights.Contains(Right.Lead))
        {
            return Refuse(new HoldPoint(HoldReason.LeadKeepsTools) { Right = Right.Lead });
        }

        if (state.RetiredBy > 0 && command is (Calibrate or CheckInstrument or ClearTool or RetireTool))
        {
            return Refuse(new HoldPoint(HoldReason.ToolRetired) { Tool = state.Tool });
        }

        return command switch
        {
            WithdrawCalibration withdraw when !state.Calibrations.Exists(book => book.Number == withdraw.Calibration && book.WithdrawnBy == 0) => Refuse(new HoldPoint(HoldReason.NothingToWithdraw)),
            WithdrawCalibration withdraw => Accept(new CalibrationWithdrawn(withdraw.Calibration, withdraw.Reason)),
            RetireTool retire => Accept(new ToolRetired(retire.Reason)),
            BringToolBack when state.RetiredBy == 0 => Refuse(new HoldPoint(HoldReason.NotRetired) { Tool = state.Tool }),
            BringToolBack back => Accept(new ToolBroughtBack(back.Reason)),
            EnterTool enter when !state.Calibrations.IsEmpty && enter.Tool.Unit != state.Tool!.Unit => Refuse(new HoldPoint(HoldReason.ToolUnitFixed) { Tool = state.Tool }),
            EnterTool enter => Accept(new ToolEntered(
                tool, enter.Tool.Name, enter.Tool.Serial, enter.Tool.Kind, enter.Tool.Unit, enter.Tool.LowestMarked, enter.Tool.Top,
                enter.Tool.Graduation, enter.Tool.ClassDeviationPercent)
            { LengthMm = enter.Tool.LengthMm, CycleLimit = enter.Tool.CycleLimit == TorqueTool.StandardCycles ? null : enter.Tool.CycleLimit }),
            Calibrate { Calibration: var calibration } => Calibrated(state, calibration, today),
            EnterInstrument enter => Accept(new InstrumentEntered(tool, enter.Instrument.Name, enter.Instrument.Serial, enter.Instrument.Kind)),
            CheckInstrument { Check: var check } => Checked(state, check, today),
            Quarantine quarantine => Accept(new Quarantined(quarantine.Reason)),
            TellOwner told => Accept(new OwnerTold(told.Car, told.Words)),
            RaiseDoubt doubt => Accept(new Doubted(doubt.Reason)),
            ClearTool when state.Doubts.IsEmpty && state.OutOfUseBy == 0 => Refuse(new HoldPoint(HoldReason.NothingToClear) { Tool = state.Tool }),
            ClearTool when AgainstClearing(state, hasUsed) is { } against => Refuse(against),
            ClearTool clear => Accept(new Cleared([.. state.Doubts.Select(doubt => doubt.Number)], clear.Reason)),
            _ => throw new ArgumentOutOfRangeException(nameof(command), command?.GetType().Name, "Not a command on a tool."),
        };
    }

    private static Verdict Calibrated(ToolState state, Calibration calibration, DateOnly today) =>
        WrongDay(state, calibration.Date, calibration.Due, today)
            ?? Accept(new Calibrated(calibration.Date, calibration.Due, calibration.Certificate, calibration.AsFound, calibration.AsLeft));

    private static Verdict Checked(ToolState state, InstrumentCheck check, DateOnly today) =>
        WrongDay(state, check.Date, check.Due, today)
            ?? Accept(new InstrumentChecked(check.Date, check.Due, check.Certificate, check.FoundGood, check.LeftGood));

    private static Verdict? WrongDay(ToolState state, DateOnly date, DateOnly due, DateOnly today) =>
        date > today ? Refuse(new HoldPoint(HoldReason.CalibrationAhead) { Day = date })
            : date < CalibrationDates.Earliest(today) ? Refuse(new HoldPoint(HoldReason.CalibrationTooOld) { Day = date })
            : due > CalibrationDates.LatestDue(date) ? Refuse(new HoldPoint(HoldReason.CalibrationTooLong) { Day = due })
            : state.LastGood is { } last && date < last.Date ? Refuse(new HoldPoint(HoldReason.CalibrationOlder) { Day = last.Date })
            : null;

    // Good readings as found, from before any adjustment, lift every doubt. Without them nobody lifts what readings raised, and
    // nobody who used the tool lifts what somebody's word raised.
    private static HoldPoint? AgainstClearing(ToolState state, Func<DoubtRaised, bool> hasUsed)
    {
        var without = state.Doubts.Where(doubt => !state.WasFoundGoodSince(doubt)).ToList();
        return without.Exists(doubt => doubt.ByReadings) ? new HoldPoint(HoldReason.NeedsReadings) { Tool = state.Tool }
            : without.Exists(doubt => hasUsed(doubt)) ? new HoldPoint(HoldReason.UsedTheTool) { Tool = state.Tool }
            : null;
    }

    private static Verdict Accept(Entry entry) => new Verdict.Accepted([entry]);

    private static Verdict Refuse(HoldPoint point) => new Verdict.Refused([point]);
}
