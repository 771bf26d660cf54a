using FluentValidation.Results;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Cautions about what the bolt is screwed into: pairing, engagement, bearing face, run-down torque.</summary>
internal static class ThreadCautions
{
    public static IEnumerable<ValidationFailure> Of(TorqueSpecification s, EnteredTorque target)
    {
        if (s.Nut is { } nut && s.Class is { } bolt && NutPairing.Judge(bolt, nut) is NutPairing.MayStrip { Reason: var why })
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Nut), "nut-weaker",
                $"Nut class: {why.TrimEnd('.')}", "fit the class the maker names");
        }

        foreach (var caution in OfEngagement(s).Concat(OfComputed(s, target)).Concat(OfRunDown(s)))
        {
            yield return caution;
        }
    }

    private static IEnumerable<ValidationFailure> OfEngagement(TorqueSpecification s)
    {
        if (s.Engaged is { } engaged && s.PartTensile is { } part && s.BoltTensile is { } bolt
            && Engagement.Critical(s.Thread, bolt, part) is { } critical && engaged < critical)
        {
            yield return TorqueSpecificationCautions.Caution(nameof(s.Engaged), "engagement-short", FormattableString.Invariant(
                $"Engaged thread: {engaged.Millimeters:0.#} mm, below the {critical.Millimeters:0.#} mm from which the bolt breaks before the thread strips"),
                "a stripped thread is not seen: check the engaged length, or ask the maker");
        }
    }

    private static IEnumerable<ValidationFailure> OfComputed(TorqueSpecification s, EnteredTorque target)
    {
        foreach (var limit in ComputedLimits.Of(s).Where(l => l.Name is "bearing pressure" or "stripping"))
        {
            if (limit.MayBeReachedBy(target, s.DeviationPercentAt(target)))
            {
                var (field, code) = limit.Name == "stripping" ? (nameof(s.Engaged), "may-strip") : (nameof(s.BearingLimit), "face-may-give");
                yield return TorqueSpecificationCautions.Caution(field, code,
                    $"Target: {target} may reach it: {limit.Sentence}", "check the part, and ask the maker if in doubt");
            }
        }
    }

    private static IEnumerable<ValidationFailure> OfRunDown(TorqueSpecification s)
    {
        if (s is { RunDownTorque: { } runDown, RunDown: RunDown.NotStated, Permitted: { } permitted })
        {
            var (least, greatest) = runDown.Clamping(permitted, RunDown.NotStated);
            yield return TorqueSpecificationCautions.Caution(nameof(s.RunDown), "run-down-not-stated", FormattableString.Invariant(
                $"Run-down torque: the instruction does not say whether {permitted} includes the {runDown} of the self-locking part: ")
                + FormattableString.Invariant($"from {least.Value:0.##} {least.Unit.Symbol()} to {greatest} of it clamps"),
                "ask the maker");
        }
    }
}
