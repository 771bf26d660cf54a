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

    public TorqueSpecificationCautions() => RuleFor(s => s).Custom((specification, context) =>
    {
        foreach (var caution in All(specification))
        {
            context.AddFailure(caution);
        }
    });

    internal static ValidationFailure Caution(string field, string code, string what, string next)
    {
        var advice = new Advice(what, next);
        return new ValidationFailure(field, advice.ToString()) { Severity = Severity.Warning, ErrorCode = code, CustomState = advice };
    }

    internal static string Word(ThreadCondition condition) => condition switch
    {
        ThreadCondition.Dry => "dry",
        ThreadCondition.Oiled => "oiled",
        ThreadCondition.PreAppliedLocker => "with pre-applied locker",
        ThreadCondition.Locker => "with locker",
        ThreadCondition.AntiSeize => "with anti-seize",
        _ => throw new ArgumentOutOfRangeException(nameof(condition), condition, "Not a thread condition."),
    };

    private static IEnumerable<ValidationFailure> All(TorqueSpecification s)
    {
        if (s.Permitted is { } permitted && permitted.HalfWidth > WidestRange)
        {
            yield return Caution(nameof(s.Permitted), "range-wide", FormattableString.Invariant(
                $"Permitted torque: {permitted} is wide, ±{permitted.HalfWidth * 100:0} % about its middle against ±15 %"),
                "choose a target, with its reason");
        }

        if (s.TargetOrOneValue is not { Value: > 0 } target)
        {
            yield break;
        }

        foreach (var caution in OfGuardBand(s, target)
            .Concat(BandCautions.Of(s, target)).Concat(ThreadCautions.Of(s, target)).Concat(NutPairCautions.Of(s, target)))
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
                $"Target: {target} with a tool that may be off by {w * 100:0.#} % can deliver outside {permitted}"),
                "choose a target further inside, or use a tool with less deviation");
        }
    }
}
