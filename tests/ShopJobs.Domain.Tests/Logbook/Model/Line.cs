using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>
/// One line of the model's own flat list: the facts of an accepted entry, and what the model itself makes of them. What the
/// product derived and wrote into the entry (problems, what it opened, what it rests on) is compared with this, never read.
/// </summary>
/// <param name="At">When it happened: the fact, whatever the clock showed.</param>
/// <param name="Day">The day as it was written.</param>
internal sealed record Line(long Number, DateTime At, DateOnly Day, PersonId Person, Entry Entry)
{
    /// <summary>Positions it says anything about; of a joint that was witnessed, none: a record names each of them before.</summary>
    public IEnumerable<JointPosition> Names => Opens.Concat(Reopens).Concat(Late).Concat(Entry switch
    {
        FittedNew fact => fact.Positions,
        ThreadTreated fact => fact.Positions,
        HandTightened fact => fact.Positions,
        TorqueRecorded fact => RidesOn is { } ridden ? [fact.Position, ridden] : [fact.Position],
        Settled fact => fact.Positions,
        PositionHeld fact => fact.Positions,
        Decided fact => [fact.Position],
        _ => Enumerable.Empty<JointPosition>(),
    });

    /// <summary>By how much the clock was wrong when it was written.</summary>
    public TimeSpan Off { get; init; }

    /// <summary>A setting that was recorded opened it.</summary>
    public bool BySetting { get; init; }

    /// <summary>Why a report does not count.</summary>
    public IReadOnlyList<HoldReason> Problems { get; init; } = [];

    /// <summary>Positions open from here.</summary>
    public IReadOnlyList<JointPosition> Opens { get; init; } = [];

    /// <summary>Positions said to be open that were open and bare already: no cycle starts.</summary>
    public IReadOnlyList<JointPosition> Reopens { get; init; } = [];

    /// <summary>Positions that a report of an earlier cycle calls open: held until somebody has looked.</summary>
    public IReadOnlyList<JointPosition> Late { get; init; } = [];

    /// <summary>The position that a pull reaches through to.</summary>
    public JointPosition? RidesOn { get; init; }

    /// <summary>Declarations of the car's condition that a pull rested on.</summary>
    public IReadOnlyList<long> Conditions { get; init; } = [];

    /// <summary>Pulls of the two jammed nuts that drove it.</summary>
    public IReadOnlyList<long> DrivenBy { get; init; } = [];

    /// <summary>Results and settings void from here.</summary>
    public IReadOnlyList<string> Undoes { get; init; } = [];

    /// <summary>Lines that a pull or a sign-off rests on.</summary>
    public IReadOnlyList<long> Rests { get; init; } = [];

    /// <summary>Run-down torque that belongs to a pull, where its group adds one.</summary>
    public EnteredTorque? RunDown { get; init; }

    /// <summary>Pulls that a witness saw; lines that a decision is about.</summary>
    public IReadOnlyList<long> About { get; init; } = [];

    /// <summary>Doubts that a decision is about.</summary>
    public IReadOnlyList<ToolDoubt> Doubts { get; init; } = [];

    /// <summary>Lines that no longer stand from here: a hand-tight of before a hold.</summary>
    public IReadOnlyList<long> TakesBack { get; init; } = [];

    /// <summary>Of a job that was taken back: what it had opened and nobody had closed.</summary>
    public IReadOnlyList<JointPosition> LeftOpen { get; init; } = [];

    /// <summary>What spoke against a move or a departure that happened all the same.</summary>
    public IReadOnlyList<HoldReason> Against { get; init; } = [];

    /// <summary>The road release that a car left under.</summary>
    public long? Under { get; init; }

    /// <summary>Jobs that it ended.</summary>
    public IReadOnlyList<JobId> Closes { get; init; } = [];

    /// <summary>Signed by somebody who learns: another has to answer for it.</summary>
    public bool ByTrainee { get; init; }

    /// <summary>Results that only a drive gives, without which a release was given.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];
}
