using FluentValidation.Results;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Cautions that compare the clamp-load band of the target with the strength of the bolt.</summary>
internal static class BandCautions
{
    /// <summary>The code of the caution that there is no band.</summary>
    public const string NotComputed = "band-not-computed";

    private const double LowUtilisation = 0.40;
    private const double HighUtilisation = 0.90;

    public static IEnumerable<ValidationFailure> Of(TorqueSpecification s, EnteredTorque target)
    {
        var band = s.BandAt(target);
        if (band is ClampBand.NotComputed { Reason: var reason })
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Seat), NotComputed,
                $"Clamp load: band not computed for this: {reason}", "follow the maker's torque; nothing here checks it against the bolt");
        }

        if (band is not ClampBand.Computed computed)
        {
            yield break;
        }

        if (computed.Utilisation is null && computed.WhileTightening is null)
        {
            yield return s.Class is null
                ? TorqueSpecificationCautions.Caution(
                    nameof(s.Class), "class-unknown",
                    "Strength class: none given, so the clamp load is not compared with the proof load", "enter the class if it is marked on the part")
                : TorqueSpecificationCautions.Caution(
                    nameof(s.Class), "class-unknown",
                    $"Strength class: {s.Class} has no proof load for {s.Thread}, so the clamp load is not compared with it", "check class and thread");
        }

        foreach (var caution in OfProof(s, target, computed).Concat(OfTightening(s, target, computed)))
        {
            yield return caution;
        }
    }

    private static IEnumerable<ValidationFailure> OfProof(TorqueSpecification s, EnteredTorque target, ClampBand.Computed band)
    {
        if (band.Utilisation is not { } u)
        {
            yield break;
        }

        var bolt = $"of the proof load of {s.Thread} {s.Class}{Equivalent(s)} at nominal friction";
        if (u.Nominal < LowUtilisation)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Target), "utilisation-low", FormattableString.Invariant(
                $"Target: {target} gives {u.Nominal * 100:0} % {bolt}, below 40 %"),
                s.LimitedBy is { } limit
                    ? $"the limit is {limit}, not the bolt: never pull on towards the proof load"
                    : "check number and unit; the limit may be another part, such as a bearing or a soft thread, and not the bolt");
        }
        else if (u.Nominal > HighUtilisation)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Target), "utilisation-high", FormattableString.Invariant(
                $"Target: {target} gives {u.Nominal * 100:0} % {bolt}, above 90 %"),
                "check number, unit and condition with the instruction");
        }

        if (u.Maximum > 1)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Target), "band-over-proof",
                $"Target: {AtTop(s, target, "the top of the band is", u.Maximum, b => b.Utilisation?.Maximum)} of proof load{Equivalent(s)}: "
                + "the bolt may stretch for good",
                "keep to the stated condition, and ask the maker if in doubt");
        }
    }

    private static IEnumerable<ValidationFailure> OfTightening(TorqueSpecification s, EnteredTorque target, ClampBand.Computed band)
    {
        if (band.WhileTightening is { Maximum: > 1 } u)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Target), "band-over-yield",
                $"Target: {AtTop(s, target, "tension and torsion while tightening may reach", u.Maximum, b => b.WhileTightening?.Maximum)} "
                + $"of yield{Equivalent(s)}: the bolt may yield before the torque is reached",
                "keep to the stated condition, and ask the maker if in doubt");
        }
    }

    /// <summary>"at 24 N·m dry WHAT 104 %, oiled 125 %,": the oiled figure only beside a dry torque of assumed friction.</summary>
    private static string AtTop(
        TorqueSpecification s, EnteredTorque target, string what, double share, Func<ClampBand.Computed, double?> shareOf)
    {
        var condition = s.Condition is { } c ? $" {TorqueSpecificationCautions.Word(c)}" : "";
        var text = FormattableString.Invariant($"at {target}{condition} {what} {share * 100:0} %");
        var oiled = s with { Condition = ThreadCondition.Oiled, StatedFriction = null };
        return s is { Condition: ThreadCondition.Dry, StatedFriction: null }
            && oiled.BandAt(target) is ClampBand.Computed wet && shareOf(wet) is { } wetShare
                ? FormattableString.Invariant($"{text}, oiled {wetShare * 100:0} %,")
                : text;
    }

    private static string Equivalent(TorqueSpecification s) => s.ClassIsEquivalent ? " (class by equivalence only)" : "";
}
