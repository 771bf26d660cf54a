using System.Linq.Expressions;
using FluentValidation;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.TorqueTools;

public sealed class ToolFormValidator : AbstractValidator<ToolForm>
{
    public const int NameLength = 40;
    public const int SerialLength = 60;

    public ToolFormValidator()
    {
        Text(form => form.Name, NameLength, "Write the name marked on the tool, for example W7.");
        RuleFor(form => form.Name).ReadsPlainly();
        Text(form => form.Serial, SerialLength, "Write the serial number; without one, how this tool is told from another of its make.");
        RuleFor(form => form.Kind).IsInEnum().WithMessage("Pick click, indicating, or torque and angle.");
        RuleFor(form => form.Unit).IsInEnum().WithMessage("Pick the unit marked on the tool.");
        Torque(form => form.LowestMarked);
        Torque(form => form.Top);
        Torque(form => form.Graduation);
        RuleFor(form => form.ClassDeviation).Custom((text, context) =>
        {
            if (!string.IsNullOrWhiteSpace(text) && Typing.Percent(text, out var problem) is null)
            {
                context.AddFailure(problem!);
            }
        });
        RuleFor(form => form.Length).Custom((text, context) =>
        {
            if (!string.IsNullOrWhiteSpace(text) && Typing.Length(text, out var problem) is null)
            {
                context.AddFailure(problem!);
            }
        });
        RuleFor(form => form.CycleLimit).Custom((text, context) =>
        {
            if (!string.IsNullOrWhiteSpace(text) && Typing.Cycles(text, out var problem) is null)
            {
                context.AddFailure(problem!);
            }
        });
        RuleFor(form => form.Top).Custom((_, context) =>
        {
            var form = context.InstanceToValidate;
            if (Number(form, form.LowestMarked) is { } lowest && Number(form, form.Top) is { } top && top <= lowest)
            {
                context.AddFailure("The greatest value is above the lowest marked one.");
            }
        });
        RuleFor(form => form.Graduation).Custom((_, context) =>
        {
            var form = context.InstanceToValidate;
            if (Number(form, form.LowestMarked) is { } lowest && Number(form, form.Top) is { } top && Number(form, form.Graduation) is { } step
                && top > lowest && step > top - lowest)
            {
                context.AddFailure("One step between two marks is not wider than the whole range.");
            }
        });
    }

    private static decimal? Number(ToolForm form, string text) => Typing.Torque(text, form.Unit, out _);

    private void Text(Expression<Func<ToolForm, string>> field, int length, string missing) =>
        RuleFor(field).Must(text => Typed.Clean(text).Length > 0).WithMessage(missing)
            .MaximumLength(length).WithMessage($"It takes at most {length} letters. Shorten it.");

    private void Torque(Expression<Func<ToolForm, string>> field) => RuleFor(field).Custom((text, context) =>
    {
        if (Typing.Torque(text, context.InstanceToValidate.Unit, out var problem) is null)
        {
            context.AddFailure(problem!);
        }
    });
}
