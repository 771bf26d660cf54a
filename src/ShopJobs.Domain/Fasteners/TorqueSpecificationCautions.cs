using FluentValidation;
using FluentValidation.Results;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// The cautions of a torque specification, all of <see cref="Severity.Warning"/>. They rest on assumed friction, stand beside
/// the maker's instruction and never move a stated number.
/// </summary>
internal sealed class TorqueSpecificationCautions : AbstractValidator<TorqueSpecification>
{
    private const decimal WidestRange = 0.15m;
    private const double LowUtilisation = 0.40;
    private const double HighUtilisation = 0.90;
    private const double DriveReserve = 1.25;

    public TorqueSpecificationCautions() => RuleFor(s => s).Custom((specification, context) =>
    {
        foreach (var caution in All(specification))
        {
            context.AddFailure(caution);
        }
    });

    private static IEnumerable<ValidationFailure> All(TorqueSpecification s)
    {
        if (s.Permitted is { } permitted && permitted.HalfWidth > WidestRange)
        {
            yield return Caution(nameof(s.Permitted), "range-wide", FormattableString.Invariant(
                $"Permitted torque: {permitted} is wide, ±{permitted.HalfWidth * 100:0} % about its middle against ±15 %: ")
                + "a target must be chosen, with its reason.");
        }

        if (s.TargetOrOneValue is not { Value: > 0 } target)
        {
            yield break;
        }

        foreach (var caution in OfGuardBand(s, target).Concat(OfBand(s, target)).Concat(OfPair(s, target)))
        {
            yield return caution;
        }
    }

    private static IEnumerable<ValidationFailure> OfGuardBand(TorqueSpecification s, EnteredTorque target)
    {
        if (s.Permitted is not { IsOneValue: false } permitted || !permitted.Contains(target))
        {
            yield break;
        }

        var w = s.DeviationPercentAt(target) / 100;
        if (target.NewtonMetres * (1 - w) < permitted.Minimum.NewtonMetres || target.NewtonMetres * (1 + w) > permitted.Maximum.NewtonMetres)
        {
            yield return Caution(nameof(s.Target), "target-guard", FormattableString.Invariant(
                $"Target: {target} with a tool that may be off by {w * 100:0.#} % can deliver outside {permitted}. ")
                + "Choose a target further inside, or use a tool with less deviation.");
        }
    }

    private static IEnumerable<ValidationFailure> OfBand(TorqueSpecification s, EnteredTorque target)
    {
        var band = s.BandAt(target);
        if (band is ClampBand.NotComputed { Reason: var reason })
        {
            yield return Caution(nameof(s.Seat), "band-not-computed",
                $"Clamp load: band not computed for this: {reason}. Follow the maker's torque; nothing here checks it against the bolt.");
        }

        if (band is not ClampBand.Computed { Utilisation: { } u })
        {
            if (band is ClampBand.Computed)
            {
                yield return Caution(nameof(s.Class), "class-unknown", s.Class is null
                    ? "Strength class: none given, so the clamp load is not compared with the proof load. Enter the class if it is marked on the part."
                    : $"Strength class: {s.Class} has no proof load for {s.Thread}, so the clamp load is not compared with it. Check class and thread.");
            }

            yield break;
        }

        var equivalent = s.ClassIsEquivalent ? " (class by equivalence only)" : "";
        if (u.Nominal < LowUtilisation)
        {
            yield return Caution(nameof(s.Target), "utilisation-low", FormattableString.Invariant(
                $"Target: {target} gives {u.Nominal * 100:0} % of the proof load of {s.Thread} {s.Class}{equivalent} at nominal friction, below 40 %. ")
                + "Check number and unit; the limit may be another part, such as a bearing or a soft thread, and not the bolt.");
        }
        else if (u.Nominal > HighUtilisation)
        {
            yield return Caution(nameof(s.Target), "utilisation-high", FormattableString.Invariant(
                $"Target: {target} gives {u.Nominal * 100:0} % of the proof load of {s.Thread} {s.Class}{equivalent} at nominal friction, above 90 %. ")
                + "Check number, unit and condition with the instruction.");
        }

        if (u.Maximum > 1)
        {
            yield return Caution(nameof(s.Target), "band-over-proof",
                $"Target: {TopOfBand(s, target, u)} of proof load{equivalent}: the bolt may stretch for good. "
                + "Keep to the stated condition, and ask the maker if in doubt.");
        }
    }

    private static string TopOfBand(TorqueSpecification s, EnteredTorque target, ProofUtilisation u)
    {
        var condition = s.Condition is { } c ? $" {Word(c)}" : "";
        var text = FormattableString.Invariant($"at {target}{condition} the top of the band is {u.Maximum * 100:0} %");
        var oiled = s with { Condition = ThreadCondition.Oiled, StatedFriction = null };
        return s is { Condition: ThreadCondition.Dry, StatedFriction: null } && oiled.BandAt(target) is ClampBand.Computed { Utilisation: { } wet }
            ? FormattableString.Invariant($"{text}, oiled {wet.Maximum * 100:0} %,")
            : text;
    }

    private static IEnumerable<ValidationFailure> OfPair(TorqueSpecification s, EnteredTorque target)
    {
        if (s.Jam is not { Value: > 0 } jam)
        {
            yield break;
        }

        if ((s.JamFaceDiameter ?? NutPair.PlainNutFace(s.Thread)) is not { } face)
        {
            yield return Caution(nameof(s.Jam), "creep-not-computed",
                $"Jam torque: creep of the nut pair is not computed for {s.Thread}: the face between the nuts is not known. "
                + "Enter its mean diameter, and watch the line.");
            yield break;
        }

        var creep = NutPair.Creep(s.Thread, face, jam, NutPair.AssumedFriction);
        if (target.ToTorque().NewtonMeters * DriveReserve > creep.AtLowFriction.NewtonMeters)
        {
            yield return Caution(nameof(s.Jam), "pair-creep", FormattableString.Invariant(
                $"Jam torque: with {jam} the nuts may creep from {creep.AtLowFriction.NewtonMeters:0} N·m at low friction ")
                + FormattableString.Invariant(
                    $"({creep.Friction.Low:0.00}; {creep.AtHighFriction.NewtonMeters:0} N·m at {creep.Friction.High:0.00}), and the target is {target}: ")
                + "watch the line across stud and nuts; if it breaks, the pull does not count. "
                + "Raise the jam torque as the maker allows, or call the lead.");
        }
    }

    private static string Word(ThreadCondition condition) => condition switch
    {
        ThreadCondition.Dry => "dry",
        ThreadCondition.Oiled => "oiled",
        ThreadCondition.PreAppliedLocker => "with pre-applied locker",
        ThreadCondition.Locker => "with locker",
        ThreadCondition.AntiSeize => "with anti-seize",
        _ => throw new ArgumentOutOfRangeException(nameof(condition), condition, "Not a thread condition."),
    };

    private static ValidationFailure Caution(string field, string code, string message) =>
        new(field, message) { Severity = Severity.Warning, ErrorCode = code };
}
