using FluentValidation;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>Checks a calibration against the tool it is of.</summary>
public sealed class CalibrationFormValidator : AbstractValidator<CalibrationForm>
{
    public const int CertificateLength = 120;
    public const int MostPoints = 40;

    public CalibrationFormValidator(TorqueTool tool, DateOnly today)
    {
        RuleFor(form => form.Date).NotNull().WithMessage("Give the day of the calibration, as the certificate says it.")
            .LessThanOrEqualTo(today).WithMessage("The calibration is dated after today. Read the certificate's date again.")
            .GreaterThanOrEqualTo(CalibrationDates.Earliest(today)).WithMessage($"That is more than {CalibrationDates.MostYearsBack} years ago. Read the certificate's date again.");
        RuleFor(form => form.Due).NotNull().WithMessage("Give the last day on which it is good.")
            .GreaterThanOrEqualTo(form => form.Date).When(form => form.Date is not null && form.Due is not null, ApplyConditionTo.CurrentValidator)
            .WithMessage("The due day is before the calibration. Read both again.")
            .Must((form, due) => due is null || form.Date is not { } date || due <= CalibrationDates.LatestDue(date))
            .WithMessage($"A calibration is good for at most {CalibrationDates.MostYearsGood} years here. Read both days again.");
        RuleFor(form => form.Certificate)
            .Must(text => Typed.Clean(text).Length > 0).WithMessage("Write the laboratory and the number of the certificate.")
            .MaximumLength(CertificateLength).WithMessage($"It takes at most {CertificateLength} letters. Shorten it.");
        RuleFor(form => form.Points).Must(points => points.Exists(row => !row.IsBlank))
            .WithMessage("Copy at least one reading of the rig from the certificate.")
            .Must(points => points.Count <= MostPoints).WithMessage($"At most {MostPoints} points. Enter the series of the certificate once.");
        RuleForEach(form => form.Points).Where(row => !row.IsBlank).ChildRules(row =>
        {
            row.RuleFor(point => point.Set).Custom((text, context) => Check(text, context, tool, mustBeInRange: true));
            row.RuleFor(point => point.Found).Custom((text, context) => CheckIfThere(text, context, tool));
            row.RuleFor(point => point.Left).Custom((text, context) => CheckIfThere(text, context, tool));
        });
    }

    private static void CheckIfThere(string text, ValidationContext<CalibrationForm.PointRow> context, TorqueTool tool)
    {
        if (!string.IsNullOrWhiteSpace(text))
        {
            Check(text, context, tool, mustBeInRange: false);
        }
    }

    private static void Check(string text, ValidationContext<CalibrationForm.PointRow> context, TorqueTool tool, bool mustBeInRange)
    {
        if (Typing.Torque(text, tool.Unit, out var problem) is not { } value)
        {
            context.AddFailure(problem!);
        }
        else if (mustBeInRange && !tool.IsInRange(new EnteredTorque(value, tool.Unit)))
        {
            context.AddFailure($"{TypedNumber.Plain(value)} is outside the tool's range, {TypedNumber.Plain(tool.LowestMarked)} to {TypedNumber.Plain(tool.Top)} {tool.Unit.Symbol()}.");
        }
    }
}
