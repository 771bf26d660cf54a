namespace ShopJobs.Domain.Tests.Specification.Joint;

/// <summary>The stages of the joint.</summary>
internal enum Stage
{
    Snug,
    Final,
}

/// <summary>What happened before, for the courses that must come to an end.</summary>
[Flags]
internal enum Past
{
    Nothing = 0,
    Short = 1,
    Over = 2,
    NeverPulled = 4,
    Late = 8,
}

/// <summary>A cell of the joint: one nut at one stage.</summary>
internal readonly record struct Cell(int Nut, Stage Stage)
{
    public override string ToString() => $"nut {Nut} {(Stage == Stage.Snug ? "snug" : "final")}";
}

/// <summary>A joint of two nuts, opened and redone as a joint, pulled in the order 1, 2 in two stages.</summary>
internal sealed record JointState(Nut One, Nut Two, Past Past)
{
    public static readonly JointState AsItCame = new(default, default, Past.Nothing);

    public Nut this[int nut] => nut == 1 ? One : Two;

    public bool Any(Func<Nut, bool> holds) => holds(One) || holds(Two);

    public bool All(Func<Nut, bool> holds) => holds(One) && holds(Two);

    public JointState With(int nut, Nut changed) => nut == 1 ? this with { One = changed } : this with { Two = changed };

    public JointState Each(Func<Nut, Nut> change) => this with { One = change(One), Two = change(Two) };

    public JointState Saw(Past past) => this with { Past = Past | past };

    public override string ToString() => $"1: {Say(One)} | 2: {Say(Two)}";

    private static string Say(Nut nut) => $"{nut.Sits}, snug {nut.Snug}, final {nut.Final}, {nut.Stop}{(nut.Twice ? ", clicked twice" : "")}";
}
