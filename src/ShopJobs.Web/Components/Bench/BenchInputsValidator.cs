using FluentValidation;

namespace ShopJobs.Web.Components.Bench;

/// <summary>What is wrong with the inputs of a card, field by field; what the fields say together once each can be read.</summary>
public sealed class BenchInputsValidator : AbstractValidator<BenchInputs>
{
    /// <summary>The name under which an unknown unit in the address is reported.</summary>
    public const string UnitName = "unit";

    public BenchInputsValidator(BenchCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        RuleFor(inputs => inputs.UnknownUnit).Null().OverridePropertyName(UnitName)
            .WithMessage("The address names a unit that is not known here: pick one of these.");
        RuleFor(inputs => inputs).Custom((inputs, context) =>
        {
            var found = card.Fields.Select(field => (field.Key, Problem: field.ProblemOf(inputs))).Where(field => field.Problem is not null).ToList();
            foreach (var (key, problem) in found)
            {
                context.AddFailure(key, problem);
            }

            foreach (var problem in found.Count > 0 ? [] : card.Problems(inputs))
            {
                context.AddFailure(problem.Field.Key, problem.Words);
            }
        });
    }
}
