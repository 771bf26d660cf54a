namespace ShopJobs.Domain.Procedures;

/// <summary>Whether two revisions of a procedure ask the same in a step or a stage.</summary>
public static class StepLikeness
{
    /// <summary>True where a step asks the same: its words, ticks, measures, results, what it opens and waits for, and what it pulls.</summary>
    public static bool AsksTheSame(Procedure before, Step one, Procedure after, Step other)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(other);
        return (one.Title, one.Per, one.Interleaved) == (other.Title, other.Per, other.Interleaved)
            && one.Places.SequenceEqual(other.Places)
            && one.Cautions.SequenceEqual(other.Cautions)
            && one.Lines.SequenceEqual(other.Lines)
            && one.Ticks.SequenceEqual(other.Ticks)
            && one.Measures.Select(Plain).SequenceEqual(other.Measures.Select(Plain))
            && one.Records.SequenceEqual(other.Records)
            && one.Opens.SequenceEqual(other.Opens)
            && one.WaitsFor.SequenceEqual(other.WaitsFor)
            && one.Work.Count == other.Work.Count
            && one.Work.Zip(other.Work).All(work => AsksTheSame(before, work.First, after, work.Second));
    }

    /// <summary>True where two groups ask the same of a stage, on the same joint, hardware and thread.</summary>
    public static bool AsksTheSame(JointGroup one, JointGroup other, int stage)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return (one.Key, one.Condition, one.Hardware) == (other.Key, other.Condition, other.Hardware) && AsksTheSame(one.Stages[stage - 1], other.Stages[stage - 1]);
    }

    /// <summary>True where a stage is pulled to the same value, in the same range, order and car condition, and seen by as many.</summary>
    public static bool AsksTheSame(Stage one, Stage other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return (one.Number, one.Value, one.Permitted, one.Evidence, one.Witness, one.Turn) == (other.Number, other.Value, other.Permitted, other.Evidence, other.Witness, other.Turn)
            && one.Conditions.SequenceEqual(other.Conditions)
            && one.Visits.SequenceEqual(other.Visits);
    }

    private static bool AsksTheSame(Procedure before, StepWork one, Procedure after, StepWork other) =>
        one.Group == other.Group && one.Stages.SequenceEqual(other.Stages)
        && one.Stages.All(number => AsksTheSame(before.Group(one.Group), after.Group(other.Group), number));

    // Where a limit comes from may be written better without asking anything else.
    private static Measure Plain(Measure measure) => measure with { Source = null };
}
