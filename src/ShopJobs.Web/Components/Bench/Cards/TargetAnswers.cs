using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>The choice of a target as an answer: what to set is always a mark of the wrench, and its step is said.</summary>
internal static class TargetAnswers
{
    /// <summary>A target was chosen.</summary>
    public static BenchAnswer Of(TargetChoice.Safe safe, TorqueRange permitted, WrenchStep step, BenchUnits units)
    {
        var room = $"{ShownFigure.Inwards(units.In(safe.Low), isLower: true)} to {ShownFigure.Inwards(units.In(safe.High), isLower: false)} {units.TorqueUnit.Symbol()}";
        var aim = safe.Setting == safe.Target ? "" : $" for {units.Computed(safe.Target)} at the fastener";
        return new BenchAnswer($"Set {units.Set(safe.Setting)}", $"Set {units.Set(safe.Setting)}{aim} ({step}). {room} keeps it inside the permitted range.")
        {
            Pictures =
            [
                units.Torques(units.Mark("target", safe.Target, LineMarkKind.Value, units.Computed(safe.Target))) with
                {
                    Span = units.Span("room for the target", safe.Low, safe.High, room),
                    Permitted = Permitted(permitted, units),
                },
            ],
            Lists = [new("Limits", safe.Limits), Widening(safe)],
            Cautions = safe.Cautions,
        };
    }

    /// <summary>One value is stated; the wrench either has a mark for it or it has not.</summary>
    public static BenchAnswer Of(TargetChoice.Stated stated, TorqueRange permitted, WrenchStep step, BenchUnits units)
    {
        var (mark, isMark) = (step.Nearest(stated.Setting), step.IsMark(stated.Setting));
        var withAdapter = stated.Setting != stated.Value;
        var answer = isMark || withAdapter
            ? new BenchAnswer($"Set {units.Set(mark)}", $"One value is stated: set {units.Set(mark)}{(withAdapter ? $" for {units.Say(stated.Value)} at the fastener" : "")} ({step}). Nothing is chosen.")
            {
                Pictures = [Line(units.Mark("set", mark, LineMarkKind.Value, units.Set(mark)))],
            }
            : new BenchAnswer("No mark for it", $"One value is stated, {units.Say(stated.Value)}, and this wrench has no mark there ({step}): use one with finer steps.")
            {
                Pictures = [Line(units.Mark("nearest mark", mark, LineMarkKind.Beside, units.Set(mark)))],
            };
        return answer with
        {
            Lines = isMark ? [] : [new("Set, not rounded", units.Say(stated.Setting with { Value = Math.Round(stated.Setting.Value, 3) }), "before it is brought to a mark of the wrench")],
            Cautions = [.. stated.Conflicts, .. stated.Cautions],
            Lists = [Widening(stated)],
        };

        NumberLine Line(LineMark mark) => units.Torques(
            mark, units.Mark("stated", permitted.Minimum, withAdapter ? LineMarkKind.Beside : LineMarkKind.Limit));
    }

    /// <summary>Nothing can be chosen.</summary>
    public static BenchAnswer Of(TargetChoice.None none, TorqueRange permitted, BenchUnits units) =>
        new("No target", "No target: with this wrench nothing keeps it inside the permitted range.")
        {
            Pictures = [units.Torques() with { Permitted = Permitted(permitted, units) }],
            Cautions = none.Reasons,
            Lists = [Widening(none)],
        };

    private static LineRange Permitted(TorqueRange permitted, BenchUnits units) => units.Span("permitted", permitted.Minimum, permitted.Maximum);

    private static BenchList Widening(TargetChoice choice) => new("What would widen it", choice.Widening);
}
