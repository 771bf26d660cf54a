using System.Collections.Immutable;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>What is on a position, apart from torque.</summary>
public enum Fitting
{
    AsFound,
    Open,
    NewHardware,
    HandTight,
}

/// <summary>A second person's look at a pull.</summary>
public sealed record Look(long Number, PersonId Person);

/// <summary>One pull of the present cycle, with what happened to its record since.</summary>
public sealed record Pull(long Number, DateTime At, PersonId Person, TorqueRecorded Fact)
{
    /// <summary>Voided by a correction.</summary>
    public bool Voided { get; init; }

    /// <summary>The value as restated by a correction that a second person confirmed.</summary>
    public EnteredTorque? Confirmed { get; init; }

    /// <summary>Values restated since then. Each may only make the pull worse: it passes when all of them do.</summary>
    public ImmutableList<EnteredTorque> Unconfirmed { get; init; } = [];

    /// <summary>A second person confirmed the newest correction.</summary>
    public bool CorrectionConfirmed { get; init; }

    /// <summary>The value as last restated; null when it never was.</summary>
    public EnteredTorque? Restated => Unconfirmed.IsEmpty ? Confirmed : Unconfirmed[^1];

    /// <summary>Decided <em>use as is</em>: number of the decision.</summary>
    public long? AcceptedBy { get; init; }

    /// <summary>Looks at it that are valid, in the order in which they were given or came back.</summary>
    public ImmutableList<Look> Looks { get; init; } = [];

    /// <summary>Looks that fell when the value was restated: each is valid again when the same person confirms the figure.</summary>
    public ImmutableList<Look> LooksBefore { get; init; } = [];

    /// <summary>Number of the witness's entry; null while nobody has looked.</summary>
    public long? WitnessedBy => Looks.IsEmpty ? null : Looks[^1].Number;

    /// <summary>Somebody with the right answers for it: number of the entry. Null while nobody does.</summary>
    public long? CountersignedBy { get; init; }

    /// <summary>For a voided pull: whether the fastener was pulled all the same. Null where that was not asked.</summary>
    public bool? WasPulled { get; init; }

    /// <summary>True at the final stage of its group.</summary>
    public bool IsFinal => Fact.Stage == Fact.Spec.Stages;

    /// <summary>The fastener was turned by an angle, or may have been: a second turn would stretch it further.</summary>
    public bool IsTurn => Fact.IsTurn();

    /// <summary>A void that a second person confirmed, of a pull that was never made: as if it had never been written.</summary>
    public bool IsGone => Voided && CorrectionConfirmed && WasPulled != true;

    /// <summary>The torque that counts now; null where an angle was turned.</summary>
    public EnteredTorque? Value => Restated ?? Fact.Value;

    /// <summary>What counts now, as it is read out: "110 N·m", "90°".</summary>
    public string Amount() => Value?.ToString() ?? Fact.Amount();

    /// <summary>The torque that counts now at the fastener: through the adapter, without the run-down torque; the value itself where there is neither.</summary>
    public EnteredTorque? AtFastener => Value is not { } value || Fact is { RunDown: null, Spec.SettingRatio: null }
        ? Value
        : new EnteredTorque(Judging.AtFastener(value.NewtonMetres, Fact.Spec, Fact.RunDown), TorqueUnit.NewtonMetre);

    /// <summary>What is wrong with it now, corrections included. A void is apart from this.</summary>
    public IReadOnlyList<HoldReason> Problems => Judging.ProblemsOf(this);

    /// <summary>Why it holds its position; null when nothing is wrong, or it was used as is, or what is wrong has a way out without a decision.</summary>
    public HoldReason? HoldReason => Outcome == PullOutcome.Held ? Problems[0] : null;

    /// <summary>What became of it: used as is, it counts whatever is wrong with it. A void is apart from this.</summary>
    public PullOutcome Outcome => AcceptedBy is null ? PullOutcomes.Of(Problems) : PullOutcome.Counts;

    /// <summary>Over the maximum of its joint, or turned too far: what it rides on was stretched as far.</summary>
    public bool ReachesWhatItRidesOn => Problems.Contains(Logbook.HoldReason.TurnOutside)
        || (Problems.Contains(Logbook.HoldReason.OverRange) && Values.Any(value =>
            Judging.AtFastener(value.NewtonMetres, Fact.Spec, Fact.RunDown) > (Fact.Spec.JointMaximum ?? Fact.Spec.Maximum)));

    private IEnumerable<EnteredTorque> Values => new[] { Confirmed ?? Fact.Value }.Concat(Unconfirmed.Cast<EnteredTorque?>()).OfType<EnteredTorque>();

    /// <summary>Made by somebody without the right, and nothing else is wrong: whoever stood by countersigns it.</summary>
    public bool AwaitsCountersign => Outcome == PullOutcome.AwaitsCountersign;

    /// <summary>True while nobody with the right has answered for it.</summary>
    public bool WaitsForAnswer => AwaitsCountersign && CountersignedBy is null && !Voided;

    /// <summary>Short of the range, and nothing else wrong: the procedure says what to do, nobody need decide.</summary>
    public bool IsShort => Outcome == PullOutcome.Short;
}

/// <summary>A re-torque after the drive, with its instant.</summary>
public sealed record SettledRecord(DateTime At, Settled Fact);

/// <summary>A hold on a position. It leaves only by its decision, and by carrying that out.</summary>
/// <param name="Number">Entry that holds it.</param>
/// <param name="At">Since when.</param>
/// <param name="By">Who recorded that entry.</param>
/// <param name="Decision">What was decided; null while undecided.</param>
public sealed record Hold(long Number, DateTime At, PersonId By, HoldReason Reason, Disposition? Decision = null)
{
    /// <summary>Everybody who had worked on the position by then: none of them decides it, even after it was opened.</summary>
    public ImmutableHashSet<PersonId> Workers { get; init; } = [];
}

/// <summary>Everything the logbook knows of one position of one car.</summary>
public sealed record PositionBook(JointPosition Position)
{
    /// <summary>How often it was opened.</summary>
    public int Cycle { get; init; }

    public Fitting Fitting { get; init; }

    /// <summary>Entry that last opened it; 0 when never.</summary>
    public long OpenedBy { get; init; }

    /// <summary>Newest entry that opened, settled or decided it, also where that changed nothing; 0 when none.</summary>
    public long NamedBy { get; init; }

    /// <summary>Newest entry of the cycle that the last opening ended; 0 where nobody here had touched it before.</summary>
    public long TouchedBefore { get; init; }

    /// <summary>When it was last opened or run down by hand.</summary>
    public DateTime Since { get; init; }

    /// <summary>The entry that says so; null when it never was.</summary>
    public Entry? SinceEntry { get; init; }

    /// <summary>Entry that last fitted new hardware, in any cycle; 0 when never.</summary>
    public long FittedNewBy { get; init; }

    /// <summary>Entry that last ran it down by hand in this cycle; 0 when none.</summary>
    public long HandTightBy { get; init; }

    /// <summary>Entry that last reported something on it since it was opened, counting or not; 0 when none.</summary>
    public long On { get; init; }

    /// <summary>Entry that last declared from paper that it was pulled, since it was opened; 0 when none, or a second person has said that it never was.</summary>
    public long DeclaredBy { get; init; }

    /// <summary>New hardware must be newer than this entry; 0 when none is asked.</summary>
    public long NewHardwareSince { get; init; }

    /// <summary>What its thread carries, as it was last recorded, in any cycle; null where nobody said.</summary>
    public ThreadTreated? Thread { get; init; }

    /// <summary>Entry of the re-torque after the drive; 0 when none in this cycle.</summary>
    public long SettledBy { get; init; }

    /// <summary>The re-torque itself.</summary>
    public SettledRecord? Settled { get; init; }

    /// <summary>Job whose specification is in force: the last one that opened, fitted or ran it down.</summary>
    public JobId? InForce { get; init; }

    /// <summary>The entry by which it is; 0 where none is in force.</summary>
    public long InForceBy { get; init; }

    /// <summary>Pulls since it was last opened.</summary>
    public ImmutableList<Pull> Pulls { get; init; } = [];

    /// <summary>Holds in force.</summary>
    public ImmutableList<Hold> Holds { get; init; } = [];

    /// <summary>The newest decision made on it, in any cycle; null when none was.</summary>
    public DecisionMade? LastDecision { get; init; }

    /// <summary>Lot or kit of the hardware on it, as it was recorded; null where none was.</summary>
    public string? Lot { get; init; }

    /// <summary>Doubts of tools that were decided here.</summary>
    public ImmutableList<ToolDoubt> DoubtsDecided { get; init; } = [];

    /// <summary>Everybody who recorded, held or helped since it was last opened.</summary>
    public ImmutableHashSet<PersonId> Workers { get; init; } = [];

    /// <summary>The newest pull of this cycle, confirmed voids left out.</summary>
    public Pull? Last => Pulls.FindLast(pull => !pull.IsGone);

    /// <summary>The highest stage it was pulled to, counting or not; 0 when it was not pulled.</summary>
    public int Highest => Pulls.Where(pull => !pull.IsGone).Select(pull => pull.Fact.Stage).DefaultIfEmpty(0).Max();

    /// <summary>Newest pull of each cell, confirmed voids left out.</summary>
    public IEnumerable<Pull> Cells => Pulls.Where(pull => !pull.IsGone)
        .GroupBy(pull => (pull.Fact.Stage, pull.Fact.Visit))
        .Select(cell => cell.Last());

    /// <summary>True while the record of an angle on it is void and no second person has said that it was never turned.</summary>
    public bool HasVoidedTurn => Pulls.Exists(pull => pull is { IsTurn: true, Voided: true, IsGone: false });

    /// <summary>True while a short pull, or the record of one that may have been made, asks to back off before anything else.</summary>
    public bool BackOffFirst => MayHaveBeenPulled || (AnyShort && Cells.Any(pull => pull.IsShort && pull.Fact.Spec.IfShort != IfShort.Continue));

    /// <summary>True while a torque record is void, or a pull declared from paper, and no second person has said that it was never pulled.</summary>
    public bool MayHaveBeenPulled => DeclaredBy > 0 || Pulls.Exists(pull => pull is { IsTurn: false, Voided: true, IsGone: false });

    /// <summary>Entry of a short pull that asks for new hardware; null when none.</summary>
    public long? ReplaceFor => AnyShort
        ? Cells.Where(pull => pull.IsShort && pull.Fact.Spec.IfShort == IfShort.Replace).Max(pull => (long?)pull.Number)
        : null;

    /// <summary>True when it was re-torqued after its newest pull.</summary>
    public bool IsSettled => Last is { } last && SettledBy > last.Number;

    /// <summary>Open, with nothing on it.</summary>
    public bool IsBare => this is { Fitting: Fitting.Open, On: 0 };

    /// <summary>True when nobody here ever touched it.</summary>
    public bool IsAsFound => Fitting == Fitting.AsFound && Last is null && DeclaredBy == 0;

    // Seldom so, and asked at every pull and opening: sorting the pulls into cells is spared.
    private bool AnyShort => Pulls.Exists(pull => pull.IsShort);
}
