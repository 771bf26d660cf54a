namespace ShopJobs.Domain.Tests.Specification.Conditions;

/// <summary>What people say and do, and what the book makes of it. Each nut asks for its own wheel up and the engine cold.</summary>
internal static class ConditionActions
{
    public static readonly Corner[] Corners = [Corner.Left, Corner.Right];

    public static Sheet<ConditionState> WithActions(this Sheet<ConditionState> sheet) => sheet
        .May("WheelUp", Corners, (_, _) => true, (s, corner) => s.With(corner, s[corner].Ended() with { Wheel = Wheel.Up }))
        .May("WheelDown", Corners, (_, _) => true, (s, corner) => s.With(corner, s[corner].Ended() with { Wheel = Wheel.Down }))
        .May("EngineCold", _ => true, s => s.Each(place => place.Ended()) with { Cold = true })
        .May("Open", Corners, (_, _) => true, (s, corner) => s[corner].Nut == Nut.Open ? s : s.With(corner, default))
        .May("HandTight", Corners, (s, corner) => s[corner].Nut == Nut.Open, (s, corner) => s.With(corner, s[corner] with { Nut = Nut.HandTight }))
        .May("Pull", Corners, (s, corner) => s[corner].Nut == Nut.HandTight, (s, corner) => s.With(corner, Pulled(s, corner)))
        .May("Release", s => s.Left.Nut == Nut.Good && s.Right.Nut == Nut.Good, Ended)
        .May("LeaveAndReturn", s => s.Left.Nut == Nut.Good && s.Right.Nut == Nut.Good, Ended)
        .May("AgePasses", _ => true, Ended);

    private static Place Pulled(ConditionState s, Corner corner) => s[corner].Wheel == Wheel.Up && s.Cold
        ? s[corner] with { Nut = Nut.Good, Keeps = Keeps.Standing }
        : s[corner] with { Nut = Nut.Failed };

    private static ConditionState Ended(ConditionState s) => s.Each(place => place.Ended() with { Wheel = Wheel.NotSaid }) with { Cold = false };
}
