using System.Linq.Expressions;
using FluentValidation;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>Checks a part, whether it was typed or comes from a file.</summary>
/// <remarks>Takes the keys of the joint kinds in the register.</remarks>
public sealed class PartFormValidator : AbstractValidator<PartForm>
{
    public PartFormValidator(IReadOnlySet<string> kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        Text(form => form.Number, PartRow.NumberLength, "Write the maker's number of the part, for example Q4-1215.");
        Text(form => form.Maker, PartRow.MakerLength, "Write who makes it.");
        Text(form => form.Name, PartRow.NameLength, "Write what the shop calls it, for example wheel stud 42 mm.");
        RuleFor(form => form.Fills).Custom((key, context) =>
        {
            if (key.Length > 0 && key != context.InstanceToValidate.FilledBefore && !kinds.Contains(key))
            {
                context.AddFailure($"{Look.TypedNumber.Shown(key)} is no joint of the shop's register. Write a joint's key as the register has it, for example wheel.nut, or none.");
            }
        });
        RuleFor(form => form.Thread).Custom((text, context) =>
        {
            if (!string.IsNullOrWhiteSpace(text) && !ThreadSize.TryParse(text, out _, out var problem))
            {
                context.AddFailure($"{problem.TrimEnd('.')}.");
            }
        });
        RuleFor(form => form.Strength).Custom((text, context) =>
        {
            if (text.Trim().Length > PartRow.StrengthLength)
            {
                context.AddFailure($"{Look.TypedNumber.Shown(text)} is too long for a strength class. Write it as 10.9, A2-70 or SAE 8.");
            }
            else if (!string.IsNullOrWhiteSpace(text) && !StrengthClass.TryParse(text, out _, out var problem))
            {
                context.AddFailure($"{problem.TrimEnd('.')}.");
            }
        });
        RuleFor(form => form.Price).Custom((text, context) =>
        {
            var currency = context.InstanceToValidate.Currency;
            if (!string.IsNullOrWhiteSpace(text) && !PriceText.LacksCurrency(text, currency) && !PriceText.Read(text, currency, out _, out _, out var problem))
            {
                context.AddFailure(problem!);
            }
        });
        RuleFor(form => form.Currency).Custom((currency, context) =>
        {
            var price = context.InstanceToValidate.Price;
            if (!string.IsNullOrWhiteSpace(price) && PriceText.LacksCurrency(price, currency))
            {
                context.AddFailure(PriceText.NoCurrency);
            }
        });
    }

    private void Text(Expression<Func<PartForm, string>> field, int length, string missing) => RuleFor(field).Cascade(CascadeMode.Stop)
        .Must(text => PartValues.OneLine(text).Length > 0).WithMessage(missing)
        .Must(text => PartValues.OneLine(text).Length <= length).WithMessage($"It takes at most {length} letters. Shorten it.")
        .Custom((text, context) =>
        {
            if (NameRules.WrongLetters(PartValues.OneLine(text)) is { } wrong)
            {
                context.AddFailure(wrong);
            }
        });
}
