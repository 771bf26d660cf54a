using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>A value somebody measured, with its unit as entered.</summary>
public readonly record struct MeasuredValue(string Name, decimal Value, string Unit)
{
    /// <summary>Value and unit as they are read out: a counted unit is singular for one, "1 piece".</summary>
    public string Amount()
    {
        var unit = Value == 1 && Unit is ("pieces" or "turns" or "hours" or "days") ? Unit[..^1] : Unit;
        return FormattableString.Invariant($"{Value} {unit}").TrimEnd();
    }
}

/// <summary>One fact of a logbook, in the past tense. Who, when and where stand in its envelope.</summary>
public abstract record Entry
{
    /// <summary>The signer's name as it was at signing, kept outside the entry; null where nothing was signed.</summary>
    public ContentDigest? SignedAs { get; init; }

    /// <summary>The lines that were shown to the signer, kept outside the entry; null where nothing was signed.</summary>
    public ContentDigest? ShownAs { get; init; }

    /// <summary>Newest entry of the shop's logbook when this was recorded: what came before a step of the clock, and what after. Null where it had none.</summary>
    public long? Clock { get; init; }

    /// <summary>
    /// By how much its instant is ahead of what the clock showed: no entry is earlier than the one before it, also where the clock went
    /// back. Null where the instant is what the clock showed.
    /// </summary>
    public TimeSpan? Ahead { get; init; }

    /// <summary>What it is about: its job, positions, tool, problems and texts.</summary>
    public abstract EntryFacets Facets();
}

/// <summary>A procedure was put on the car.</summary>
public sealed record JobStarted(
    JobId Job, string Procedure, string Revision, string ProcedureDigest, string RegisterDigest, IReadOnlyList<string> Places) : Entry
{
    /// <summary>Which joints the car had then; null where it followed the register's own list.</summary>
    public JointList? Joints { get; init; }

    public override EntryFacets Facets() => new() { Job = Job };
}

/// <summary>The car is like this from now on; aspects not named stay as they were.</summary>
public sealed record CarConditionDeclared(IReadOnlyList<CarCondition> Conditions) : Entry
{
    /// <summary>The places it is said of, for aspects that are of a place; null where none is named.</summary>
    public IReadOnlyList<string>? Places { get; init; }

    public override EntryFacets Facets() => EntryFacets.None;
}

/// <summary>A step is done and not signed yet: whoever did it goes on at its place, and signs it with the steps after it.</summary>
/// <param name="RestsOn">As at a sign-off.</param>
/// <param name="Session">In which session; null where it was in none, and nobody goes on over it.</param>
public sealed record StepFinished(
    JobId Job,
    string Step,
    IReadOnlyList<string> Ticks,
    IReadOnlyList<MeasuredValue> Values,
    IReadOnlyList<long> RestsOn,
    SessionId? Session) : Entry
{
    public override EntryFacets Facets() => new() { Job = Job };
}

/// <summary>A step was signed, with what it rests on. Not applicable is a sign-off with a reason, and no result.</summary>
public sealed record StepConfirmed(
    JobId Job,
    string Step,
    IReadOnlyList<string> Ticks,
    IReadOnlyList<MeasuredValue> Values,
    IReadOnlyList<long> RestsOn,
    bool NotApplicable,
    ContentDigest? Reason,
    string Shown) : Entry
{
    /// <summary>Signed by a trainee: it counts when somebody who may record and stood by has countersigned it.</summary>
    public bool? ByTrainee { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Texts = KeptText.Given(("Reason", Reason)) };
}

/// <summary>How a result was come by; never mixed.</summary>
public enum ResultBasis
{
    Measured,
    LookedAt,
    Declared,
}

/// <summary>Something written down beside values: a grade, a batch, a day. Never about a person.</summary>
/// <param name="Name">Id of the note in the register.</param>
public readonly record struct WrittenNote(string Name, string Text);

/// <summary>A result such as an alignment, or a setting. Undid is what changing a setting undid.</summary>
public sealed record ResultRecorded(
    string Name,
    IReadOnlyList<MeasuredValue> Values,
    ResultBasis Basis,
    string? Instrument,
    IReadOnlyList<string> Conditions,
    JobId? Job,
    string? Step,
    IReadOnlyList<Undone> Undid) : Entry
{
    /// <summary>What was written down beside the values; null where the register asks for nothing.</summary>
    public IReadOnlyList<WrittenNote>? Notes { get; init; }

    /// <summary>The instrument of the shop that it was measured with; null where none is registered for it.</summary>
    public ToolId? Tool { get; init; }

    /// <summary>The shop's day, where an instrument is named: its check is judged by the day.</summary>
    public DateOnly? On { get; init; }

    /// <summary>Newest entry of the instrument's logbook then: a doubt behind it covers the result.</summary>
    public long? ToolEntry { get; init; }

    /// <summary>Why it is no good result; null where it is one.</summary>
    public IReadOnlyList<HoldReason>? Problems { get; init; }

    public override EntryFacets Facets() => new() { Job = Job, Tool = Tool, Problems = Problems ?? [] };
}
