using FluentValidation.Results;
using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Cautions about two nuts that drive a stud: creep of the pair and the stud between the nuts.</summary>
internal static class NutPairCautions
{
    private const double DriveReserve = 1.25;
    private const double StudUtilisation = 0.9;

    public static IEnumerable<ValidationFailure> Of(TorqueSpecification s, EnteredTorque target)
    {
        if (s.Jam is not { Value: > 0 } jam)
        {
            yield break;
        }

        if ((s.JamFaceDiameter ?? NutPair.PlainNutFace(s.Thread)) is not { } face)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Jam), "creep-not-computed",
                $"Jam torque: creep of the nut pair is not computed for {s.Thread}: the face between the nuts is not known",
                "enter its mean diameter, and watch the line");
            yield break;
        }

        var creep = NutPair.Creep(s.Thread, face, jam, NutPair.AssumedFriction);
        if (target.ToTorque().NewtonMeters * DriveReserve > creep.AtLowFriction.NewtonMeters)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Jam), "pair-creep", FormattableString.Invariant(
                $"Jam torque: with {jam} the nuts may creep from {creep.AtLowFriction.NewtonMeters:0} N·m at low friction ")
                + FormattableString.Invariant(
                    $"({creep.Friction.Low:0.00}; {creep.AtHighFriction.NewtonMeters:0} N·m at {creep.Friction.High:0.00}), and the target is {target}"),
                "watch the line across stud and nuts; if it breaks, the pull does not count. Raise the jam torque as the maker allows, or call the lead");
        }

        foreach (var caution in OfStud(s, target, jam, face))
        {
            yield return caution;
        }
    }

    private static IEnumerable<ValidationFailure> OfStud(TorqueSpecification s, EnteredTorque target, EnteredTorque jam, Length face)
    {
        if (s.Class?.YieldLoad(s.Thread) is null || s.Class.YieldStress(s.Thread.NominalDiameter) is not { } yield)
        {
            yield break;
        }

        var low = NutPair.AssumedFriction.Low;
        var used = NutPair.StudUtilisation(s.Thread, face, jam.ToTorque(), target.ToTorque(), low, yield);
        if (used > StudUtilisation)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Jam), "stud-between-nuts", FormattableString.Invariant(
                $"Jam torque: {jam} and driving at {target} may load the stud between the nuts to {used * 100:0} % of yield at friction {low:0.00}, above 90 %"),
                "do not raise the jam torque further, and ask the maker");
        }
    }
}
