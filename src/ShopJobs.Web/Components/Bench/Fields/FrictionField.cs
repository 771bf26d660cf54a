using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>Friction as people know it: the condition of the threads, or a class of VDI 2230.</summary>
public static class FrictionField
{
    /// <summary>The field.</summary>
    public static ChoiceField<BenchFriction> New() => new("threads", "Threads and faces",
    [
        .. Enum.GetValues<ThreadCondition>().Select(condition => new BenchChoice<BenchFriction>(
            Name(condition), Words(condition), new BenchFriction(condition, FrictionBand.Assumed(condition)))),
        .. FrictionClass.All.Select(friction => new BenchChoice<BenchFriction>(
            $"class-{char.ToLowerInvariant(friction.Letter)}",
            FormattableString.Invariant($"class {friction.Letter}, {friction.Low:0.00} to {friction.High:0.00}: {friction.Examples}"),
            new BenchFriction(null, friction.Band))),
    ])
    {
        Example = "dry",
        Hint = "The condition the instruction asks for. Classes are those of VDI 2230.",
    };

    private static string Name(ThreadCondition condition) => condition switch
    {
        ThreadCondition.PreAppliedLocker => "pre-applied-locker",
        ThreadCondition.AntiSeize => "anti-seize",
        _ => condition.ToString().ToLowerInvariant(),
    };

    private static string Words(ThreadCondition condition)
    {
        var band = FrictionBand.Assumed(condition);
        return FormattableString.Invariant($"{Fasteners.ClampWords.Of(condition)}, {band.Low:0.00} to {band.High:0.00}");
    }
}

/// <summary>Friction of a joint: the condition where one was picked, and the band.</summary>
public sealed record BenchFriction(ThreadCondition? Condition, FrictionBand Band);
