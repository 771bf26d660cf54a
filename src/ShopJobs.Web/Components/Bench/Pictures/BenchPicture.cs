using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Bench.Pictures;

/// <summary>What an answer draws, from its own figures.</summary>
public abstract record BenchPicture;

/// <summary>What lies on a wheel stud, to scale.</summary>
public sealed record StackPicture(WheelStudStack Stack) : BenchPicture;

/// <summary>A bolt's thread cut open, to scale.</summary>
public sealed record ThreadPicture(ThreadSize Thread) : BenchPicture;

/// <summary>A wrench with its adapter seen from above, to scale.</summary>
public sealed record LeverPicture(AdapterSetting Lever) : BenchPicture;

/// <summary>Values on one line: what may come, what is permitted, what is set or read, and where something gives.</summary>
/// <param name="Unit">Unit of every value; empty for a count.</param>
/// <param name="Marks">Values, the most important first.</param>
public sealed record NumberLine(string Unit, IReadOnlyList<LineMark> Marks) : BenchPicture
{
    /// <summary>What is permitted or needed; null where nothing is stated.</summary>
    public LineRange? Permitted { get; init; }

    /// <summary>From the least to the greatest that may come of it; null where one value does.</summary>
    public LineRange? Span { get; init; }
}

/// <summary>One value on a line: its name, its place in the line's unit, and the figure as it is said.</summary>
public sealed record LineMark(string Name, double At, string Figure, LineMarkKind Kind = LineMarkKind.Value);

/// <summary>From one value to another on a line, with the figures as they are said.</summary>
public sealed record LineRange(string Name, double From, double To, string Figure);

/// <summary>What a value on a line is.</summary>
public enum LineMarkKind
{
    /// <summary>The value asked for: set, read or expected.</summary>
    Value,

    /// <summary>A value to compare with: as entered, or before.</summary>
    Beside,

    /// <summary>Where something gives or ends.</summary>
    Limit,
}
