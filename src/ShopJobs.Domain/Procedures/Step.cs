namespace ShopJobs.Domain.Procedures;

/// <summary>A step is done once for the car, or once at each place.</summary>
public enum StepPer
{
    Car,
    Place,
}

/// <summary>One thing to be ticked, in words that name the state, not "checked".</summary>
public sealed record Tick(string Id, string Text);

/// <summary>One value to be measured. Limits are inclusive; null where the instruction gives none.</summary>
/// <param name="Id">Id inside the step.</param>
/// <param name="Text">What is measured.</param>
/// <param name="Unit">Unit of the value and the limits.</param>
/// <param name="Minimum">Least value taken.</param>
/// <param name="Maximum">Greatest value taken.</param>
/// <param name="Source">Where the limits come from: a loaded document always has it where there is a limit.</param>
public sealed record Measure(
    string Id, string Text, string Unit, decimal? Minimum, decimal? Maximum, Provenance? Source = null)
{
    /// <summary>True when a value is inside the limits, both ends inside.</summary>
    public bool Takes(decimal value) => value >= (Minimum ?? decimal.MinValue) && value <= (Maximum ?? decimal.MaxValue);

    /// <summary>The limits as they are read out: "10 pieces", "8 to 12 mm", "at most 35 °C"; null where there are none.</summary>
    public string? Limits() => (Minimum, Maximum) switch
    {
        ({ } least, { } most) when least == most => FormattableString.Invariant($"{least:0.####} {Unit}"),
        ({ } least, { } most) => FormattableString.Invariant($"{least:0.####} to {most:0.####} {Unit}"),
        ({ } least, null) => FormattableString.Invariant($"at least {least:0.####} {Unit}"),
        (null, { } most) => FormattableString.Invariant($"at most {most:0.####} {Unit}"),
        _ => null,
    };
}

/// <summary>Stages of a group that are done in a step.</summary>
public sealed record StepWork(string Group, IReadOnlyList<int> Stages);

/// <summary>What a step waits for.</summary>
public abstract record WaitsFor
{
    /// <summary>Another step is signed: at the same place, or at all places where one of the two is per car.</summary>
    public sealed record ForStep(string Step) : WaitsFor;

    /// <summary>Every position of a group has this stage, witnessed where asked.</summary>
    public sealed record ForGroup(string Group, int Stage) : WaitsFor;

    /// <summary>A result is valid.</summary>
    public sealed record ForResult(string Name) : WaitsFor;

    /// <summary>So many hours have passed since the last final pull of a group.</summary>
    public sealed record ForCure(string Group, decimal Hours) : WaitsFor;

    private WaitsFor()
    {
    }
}

/// <summary>One step of a procedure, written once and placed.</summary>
/// <param name="Id">Id inside the procedure.</param>
/// <param name="Title">Verb first.</param>
/// <param name="Per">Once for the car or at each place.</param>
/// <param name="Places">Places of the step; empty for a step per car.</param>
/// <param name="Cautions">Shown before the action.</param>
/// <param name="Lines">One action a line.</param>
/// <param name="Ticks">Things to be ticked.</param>
/// <param name="Measures">Values to be measured.</param>
/// <param name="Records">Results that must be valid before the step is signed.</param>
/// <param name="Work">Groups and stages done here.</param>
/// <param name="Interleaved">Position by position through all groups of the step, instead of group by group.</param>
/// <param name="Opens">Joint keys opened here, outside the step's own groups.</param>
/// <param name="WaitsFor">What it waits for.</param>
/// <param name="Source">Where the step's own numbers come from, such as hours of cure: a loaded document always has it where there are some.</param>
public sealed record Step(
    string Id,
    string Title,
    StepPer Per,
    IReadOnlyList<string> Places,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Lines,
    IReadOnlyList<Tick> Ticks,
    IReadOnlyList<Measure> Measures,
    IReadOnlyList<string> Records,
    IReadOnlyList<StepWork> Work,
    bool Interleaved,
    IReadOnlyList<string> Opens,
    IReadOnlyList<WaitsFor> WaitsFor,
    Provenance? Source = null);
