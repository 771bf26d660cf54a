using FluentValidation;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>
/// What keeps an option off a joint: its thread, a seat, its length on a wheel stack, or an instruction whose torque its own jam
/// torque does not allow. Shop rule; a computed load never blocks.
/// </summary>
internal static class Misfits
{
    private static readonly string[] Contradictions = ["permitted-zero", "jam-too-low", "target-above-jam"];

    public static IEnumerable<string> Of(OptionFigures figures) =>
        OfThread(figures).Concat(OfSeat(figures)).Concat(figures.Stacks.SelectMany(OfStack)).Concat(OfInstruction(figures));

    private static IEnumerable<string> OfThread(OptionFigures figures)
    {
        var asked = figures.Joint.Asked.Thread;
        if (figures.Option.Thread is { Value: var own } && !IsSame(own, asked))
        {
            yield return $"Thread: {own}, and this joint takes {asked}. It never goes in.";
        }
    }

    private static IEnumerable<string> OfSeat(OptionFigures figures)
    {
        if (figures.SeatFails)
        {
            yield return $"Face under head or shoulder: {figures.Option.Seat!.Value}, and this joint has {SeatForm.Of(figures.Joint.Asked.Seat!)}. "
                + "It would bear on an edge and come loose.";
        }
    }

    private static IEnumerable<string> OfStack(StackFigures stack)
    {
        if (stack.NutSeat is { } nut && nut != stack.Wheel.WheelSeat)
        {
            yield return $"Nut, {stack.Wheel.Name}: {nut} on a wheel with {stack.Wheel.WheelSeat}. It holds on an edge and comes loose: use the nut the wheel asks for.";
        }

        foreach (var problem in stack.Stud is { } stud ? WheelStudFit.Of(stud).Problems : [])
        {
            yield return $"Length, {stack.Wheel.Name}: {problem}";
        }
    }

    private static IEnumerable<string> OfInstruction(OptionFigures figures) =>
        figures is { Specification: { Permitted: not null } specification }
            ? new TorqueSpecificationValidator().Validate(specification).Errors
                .Where(error => error.Severity == Severity.Error && Contradictions.Contains(error.ErrorCode))
                .Select(error => $"Its instruction contradicts itself. {error.ErrorMessage}")
            : [];

    private static bool IsSame(ThreadSize one, ThreadSize other) =>
        one.Standard == other.Standard && one.DiameterMm == other.DiameterMm && one.PitchMm == other.PitchMm;
}
