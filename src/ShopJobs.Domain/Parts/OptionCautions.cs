using FluentValidation;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Parts;

/// <summary>What to know about an option before it is chosen. Nothing here blocks, and nothing moves a stated number.</summary>
internal static class OptionCautions
{
    public static IEnumerable<string> Of(OptionFigures figures) =>
        OfGaps(figures).Concat(OfStrength(figures)).Concat(OfProcedure(figures)).Concat(OfAngle(figures)).Concat(OfTorque(figures)).Concat(OfNut(figures));

    private static IEnumerable<string> OfGaps(OptionFigures figures)
    {
        if (NotStated(figures).ToList() is { Count: > 0 } gaps)
        {
            yield return $"Not stated by the maker: {string.Join(", ", gaps)}. What is not stated is not checked: ask the maker, or measure it and write down how.";
        }

        if (figures.Joint is { OnWheel: true, Stacks.Count: 0 })
        {
            yield return "No wheel stack of this car is entered, so length, engagement and nut seat are not checked. Measure the stack first.";
        }
    }

    private static IEnumerable<string> NotStated(OptionFigures figures)
    {
        var option = figures.Option;
        (string What, bool Missing)[] asked =
        [
            ("thread", option.Thread is null), ("strength", option.Strength is null), ("length", option.Length is null),
            ("face under it", option.Seat is null), ("torque", option.Torque is null),
            ("jam torque", figures.Joint.Asked.Jam is not null && option.Jam is null), ("condition of threads and faces", option.Condition is null),
            ("seat of its nut", option.Nut is { Seat: null }), ("thread of its nut", option.Nut is { Thread: null }),
            ("end of its nut", option.Nut is { End: null }), ("class of its nut", option.Nut is { Class: null }),
            ("pieces in a kit", option.Pieces is null), ("price", option.Price is null),
        ];
        return asked.Where(value => value.Missing).Select(value => value.What);
    }

    private static IEnumerable<string> OfStrength(OptionFigures figures)
    {
        if (figures.Option.Strength?.Value is not { } strength)
        {
            yield break;
        }

        if (strength.Evidence == StrengthEvidence.SaidOnly)
        {
            yield return $"Strength: {strength.Class} is stated without grade mark or test. Ask for the report of the lot; until then its proof load is only said.";
        }

        if (figures.Joint.Asked.Class is { } asked && asked != strength.Class)
        {
            yield return $"Strength: {strength.Class}, and this job's procedure was written for {asked}. The procedure is revised before the part is fitted.";
        }
    }

    private static IEnumerable<string> OfProcedure(OptionFigures figures)
    {
        var asked = figures.Joint.Asked;
        if (figures.Option.Torque is { Value: var own } && asked.Target is { } target && !own.Contains(target))
        {
            yield return $"Torque: this job's procedure sets {target}, and the instruction of this part permits {own}. The maker's instruction wins: the procedure is revised before the part is fitted.";
        }

        if (figures.Option.Jam is { Value: var ownJam } && asked.Jam is { } jam && ownJam.NewtonMetres != jam.NewtonMetres)
        {
            yield return $"Jam torque: the instruction of this part jams the two nuts at {ownJam}, and this job's procedure at {jam}. The maker's instruction wins: the procedure is revised before the part is fitted.";
        }

        if (figures.Option.Condition is { Value: var condition } && asked.Condition is { } other && condition != other)
        {
            yield return $"Condition: its torque holds {TorqueSpecificationCautions.Word(condition)}, and this job's procedure is written {TorqueSpecificationCautions.Word(other)}. The procedure is revised before the part is fitted.";
        }
    }

    private static IEnumerable<string> OfAngle(OptionFigures figures)
    {
        if (figures.Joint.TurnedOn)
        {
            yield return "Angle: this joint is turned on by an angle after its torque, and the angle of this part is not compared. Read the maker's instruction: where it asks for another one, the procedure is revised before the part is fitted.";
        }
    }

    private static IEnumerable<string> OfTorque(OptionFigures figures) =>
        figures is { Specification: { Permitted: not null } specification }
            ? new TorqueSpecificationValidator().Validate(specification).Errors
                .Where(error => error is { Severity: Severity.Warning, ErrorCode: not ("class-unknown" or BandCautions.NotComputed) })
                .Select(error => error.ErrorMessage)
            : [];

    private static IEnumerable<string> OfNut(OptionFigures figures)
    {
        if (figures.Option.Strength?.Value.Class is not { } strength)
        {
            yield break;
        }

        var nuts = figures.Option.Nut is { } own
            ? [("Nut of the kit", own.Class?.Value)]
            : figures.Stacks.Select(stack => ($"Nut, {stack.Wheel.Name}", stack.Wheel.NutClass));
        foreach (var (where, nut) in nuts)
        {
            switch (nut is null ? null : NutPairing.Judge(strength, nut))
            {
                case NutPairing.MayStrip { Reason: var reason }:
                    yield return $"{where}: {reason} Fit the class the maker names.";
                    break;
                case NutPairing.NotJudged { Reason: var reason }:
                    yield return $"{where}: pairing not judged: {reason}. Fit the class the maker names.";
                    break;
            }
        }
    }
}
