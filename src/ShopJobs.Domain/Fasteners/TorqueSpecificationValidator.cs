using System.Globalization;
using FluentValidation;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Judges a torque specification before it is published. <see cref="Severity.Error"/>: it cannot be published.
/// <see cref="Severity.Warning"/>: a caution, published and shown on the step. Computed figures never make an error.
/// Every message names the field, the value, the limit and what to do.
/// </summary>
public sealed class TorqueSpecificationValidator : AbstractValidator<TorqueSpecification>
{
    /// <summary>The rules for errors, and the cautions of <see cref="TorqueSpecificationCautions"/>.</summary>
    public TorqueSpecificationValidator()
    {
        RuleFor(s => s.Condition).NotNull().WithErrorCode("condition-missing").WithAdvice(
            "Condition: none given", "state whether the torque holds dry, oiled, with locker or with anti-seize, as the instruction says");

        RuleFor(s => s.Permitted).NotNull().WithErrorCode("permitted-missing").WithAdvice(
            "Permitted torque: none given", "enter the least and the greatest torque of the instruction, or its one value twice");

        RuleFor(s => s.Permitted).Must(p => p!.Minimum.Value > 0).When(s => s.Permitted is not null).WithErrorCode("permitted-zero")
            .WithAdvice("Permitted torque: the least value is 0", "enter a value above 0, as the instruction states it");

        RuleFor(s => s.Target).NotNull().When(s => s.Permitted is { IsOneValue: false }).WithErrorCode("target-missing").WithAdvice(
            s => new Advice($"Target: none chosen in {s.Permitted}", "choose one, with its reason"));

        RuleFor(s => s.Target).Must((s, target) => s.Permitted!.Contains(target!.Value))
            .When(s => s is { Permitted: not null, Target: not null }).WithErrorCode("target-outside").WithAdvice(
                s => new Advice(
                    $"Target: {s.Target} is {(s.Permitted!.IsUnder(s.Target!.Value) ? "below" : "above")} the permitted {s.Permitted}",
                    "choose a target inside, or read the range again from the instruction"));

        RuleFor(s => s.Target).Must((s, _) => s.TargetOrOneValue!.Value.NewtonMetres <= s.JamLimitNewtonMetres!.Value)
            .When(s => s is { Jam: not null, TargetOrOneValue: not null }).WithErrorCode("target-above-jam").WithAdvice(
                s => new Advice(
                    $"Target: {s.TargetOrOneValue} is above {JamLimit(s)} N·m, the most that two nuts jammed at {s.Jam} take with the deviation of both tools",
                    "lower the target, or raise the jam torque as the maker allows"));

        RuleFor(s => s.Jam).Must((s, _) => s.Permitted!.Minimum.NewtonMetres / (1 - (Deviation(s) / 100)) <= s.JamLimitNewtonMetres!.Value)
            .When(s => s is { Jam: not null, Permitted.IsOneValue: false }).WithErrorCode("jam-too-low").WithAdvice(
                s => new Advice(
                    $"Jam torque: {s.Jam} leaves no safe target in {s.Permitted}: the nuts take {JamLimit(s)} N·m at most with the deviation of both tools",
                    "raise the jam torque as the maker allows, use tools with less deviation, or call the lead"));

        Include(new TorqueSpecificationCautions());
    }

    private static decimal Deviation(TorqueSpecification s) =>
        s.DeviationPercentAt(s.TargetOrOneValue ?? s.Permitted!.Minimum);

    private static string JamLimit(TorqueSpecification s) =>
        Math.Round(s.JamLimitNewtonMetres!.Value, 1, MidpointRounding.ToNegativeInfinity).ToString("0.0", CultureInfo.InvariantCulture);
}
