using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Parts;

/// <summary>The lines of a comparison that belong to one wheel stack.</summary>
internal static class StackRows
{
    /// <summary>Thread engaged, end of the stud, strip of its thread, seat of the nut.</summary>
    public static IEnumerable<(string Name, Func<OptionFigures, OptionCell> Cell)> For(WheelStack wheel)
    {
        yield return ($"Thread engaged in the nut, {wheel.Name}", figures => Engaged(On(figures, wheel)));
        yield return ($"End of the stud in the nut, {wheel.Name}", figures => End(On(figures, wheel)));
        yield return ($"Engaged thread of the stud strips at, {wheel.Name}", figures => Strips(figures, On(figures, wheel)));
        yield return ($"Nut on the wheel, {wheel.Name}", figures => NutSeat(figures.Option, On(figures, wheel)));
    }

    private static StackFigures On(OptionFigures figures, WheelStack wheel) => figures.Stacks.First(stack => stack.Wheel == wheel);

    private static OptionCell Engaged(StackFigures stack)
    {
        if (stack.Stud is not { } stud)
        {
            return new OptionCell.NotComputed(stack.Missing!);
        }

        var needed = stud.Thread.NominalDiameter * WheelStudFit.LeastDiameters;
        return new OptionCell.Computed(FormattableString.Invariant($"{stud.Engaged.Millimeters:0.##} mm, {stud.Turns:0.#} turns"))
        {
            Share = needed / stud.Engaged,
            Of = $"the thread engaged is needed, {stack.Wheel.Name}",
        };
    }

    private static OptionCell End(StackFigures stack) => stack.Stud switch
    {
        null => new OptionCell.NotComputed(stack.Missing!),
        { ClosedNutDepth: { } depth, RoomInClosedNut: { } room } stud => new OptionCell.Computed(
            room > Length.Zero ? $"{FigureWords.Of(room)} room in the closed nut" : $"bottoms in the closed nut by {FigureWords.Of(-room)}")
        {
            Share = stud.Available / depth,
            Of = $"the closed nut's depth is taken, {stack.Wheel.Name}",
        },
        var stud => new OptionCell.Computed(FormattableString.Invariant($"{stud.Showing / stud.Thread.Pitch:0.#} threads show"))
        {
            Share = stud.Thread.Pitch * WheelStudFit.ThreadsShowing / stud.Showing,
            Of = $"the threads that show are needed, {stack.Wheel.Name}",
        },
    };

    private static OptionCell Strips(OptionFigures figures, StackFigures stack)
    {
        if (stack.Stud is not { } stud)
        {
            return new OptionCell.NotComputed(stack.Missing!);
        }

        if (figures.Specification?.BoltTensile is not { } tensile)
        {
            return new OptionCell.NotComputed(figures.Option.Strength is null ? "the strength is not stated" : "the class has no value for the thread");
        }

        if (ThreadStripping.Areas(stud.Thread, stud.Engaged) is not { } areas)
        {
            return new OptionCell.NotComputed($"no limits are tabled for {stud.Thread}");
        }

        var load = ThreadStripping.Load(areas.Bolt, tensile * ThreadStripping.ShearOverTensile);
        return new OptionCell.Computed(FigureWords.Of(load))
        {
            Share = figures.Band is ClampBand.Computed band ? band.Maximum / load : null,
            Of = $"what strips its thread, {stack.Wheel.Name}",
        };
    }

    private static OptionCell NutSeat(PartOption option, StackFigures stack) => (stack.OwnNut, stack.NutSeat) switch
    {
        (true, { } own) => new OptionCell.Given($"its own nut, {own}; the wheel has {stack.Wheel.WheelSeat}", option.Nut!.Seat!.Source),
        (true, null) => new OptionCell.NotStated(),
        (_, { } used) => new OptionCell.Computed($"the car's nut, {used}; the wheel has {stack.Wheel.WheelSeat}"),
        _ => throw new InvalidOperationException("A wheel stack names its nut."),
    };
}
