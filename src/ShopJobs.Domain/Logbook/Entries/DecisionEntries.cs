using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Somebody with the right stood by a pull of somebody without it, and answers for it.</summary>
/// <param name="Records">Numbers of the pulls.</param>
public sealed record Countersigned(IReadOnlyList<long> Records, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = Records };
}

/// <summary>How the witness looked.</summary>
public enum WitnessMethod
{
    LookedAtMark,
    FirstMovement,
}

/// <summary>A second person looked at the named records of one group instance. Not accepted holds every one of them.</summary>
public sealed record Witnessed(
    JobId Job,
    string Group,
    Joint Joint,
    int Stage,
    IReadOnlyList<long> Records,
    WitnessMethod Method,
    bool Accepted,
    ContentDigest? Finding,
    string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job, Joint = Joint, About = Records, Texts = KeptText.Given(("Finding", Finding)), FallsWhenOpened = true };
}

/// <summary>Somebody stopped the work on these positions: breakage, damage, doubt.</summary>
public sealed record PositionHeld(IReadOnlyList<JointPosition> Positions, ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { Positions = Positions, Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>What is to be done with a held position.</summary>
public enum Disposition
{
    UseAsIs,
    Rework,
    Replace,
}

/// <summary>A held position was decided by a person with the right, not the doer.</summary>
/// <param name="About">Numbers of the entries that hold it, and of pulls that another job's step does not take.</param>
/// <param name="Doubts">Doubts of tools that hold it.</param>
/// <param name="Acceptance">Written acceptance by the maker or a named engineer; asked for class A used as is.</param>
public sealed record Decided(
    JointPosition Position,
    Disposition Disposition,
    IReadOnlyList<long> About,
    IReadOnlyList<ToolDoubt> Doubts,
    ContentDigest Reason,
    ContentDigest? Acceptance,
    string Shown) : Entry
{
    public override EntryFacets Facets() => new() { Positions = [Position], Texts = KeptText.Given(("Reason", Reason), ("Written acceptance", Acceptance)) };
}

/// <summary>One doubt of one tool: the number of its entry in the tool's logbook.</summary>
public readonly record struct ToolDoubt(ToolId Tool, long Number);

/// <summary>An entry was voided or its value restated. It never makes valid what was not, unless confirmed.</summary>
/// <param name="Restated">The value as it should have been typed; null voids the entry.</param>
public sealed record Corrected(long Target, EnteredTorque? Restated, ContentDigest Reason) : Entry
{
    /// <summary>For a voided pull: whether the fastener was pulled all the same. Null where that was not asked.</summary>
    public bool? WasPulled { get; init; }

    public override EntryFacets Facets() => new() { About = [Target], Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>A second person with the right, not the doer, confirmed a correction.</summary>
public sealed record CorrectionConfirmed(long Correction, ContentDigest Reason) : Entry
{
    public override EntryFacets Facets() => new() { About = [Correction], Texts = KeptText.Given(("Reason", Reason)) };
}
