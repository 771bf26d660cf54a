using System.Linq.Expressions;
using FluentValidation;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data.Parts;
using UnitsNet;

namespace ShopJobs.Web.Components.Parts;

public sealed class StackFormValidator : AbstractValidator<StackForm>
{
    public StackFormValidator()
    {
        RuleFor(form => form.Name).Cascade(CascadeMode.Stop)
            .Must(text => Typed.Clean(text).Length > 0).WithMessage("Write where on the car it was measured, for example front.")
            .MaximumLength(WheelStackRow.NameLength).WithMessage($"It takes at most {WheelStackRow.NameLength} letters. Shorten it.");
        Value<Length>(form => form.HubFlange, PartText.LengthOrNone, "Measure it; write 0 where the shoulder sits on the hub's outer face.");
        Value<Length>(form => form.DiscHat, PartText.LengthOrNone, "Measure it; write 0 where no disc lies between.");
        Value<Length>(form => form.Spacer, PartText.LengthOrNone, "Measure it; write 0 where there is none.");
        Value<Length>(form => form.WheelPad, PartText.Length, "Measure from the wheel's inner face to where the nut's thread begins.");
        Value<Length>(form => form.Washer, PartText.LengthOrNone, "Measure it; write 0 where there is none.");
        Value<SeatForm>(form => form.WheelSeat, PartText.Seat, "Write the seat in the wheel: flat, cone 60, ball R14.");
        Value<SeatForm>(form => form.NutSeat, PartText.Seat, "Write the face of the nut: flat, cone 60, ball R14.");
        Value<Length>(form => form.NutThread, PartText.Length, "Measure the full thread in the nut.");
        Value<NutEnd>(form => form.NutEnd, PartText.NutEnd, "Write open, or the depth of the closed nut.");
        RuleFor(form => form.NutClass).Custom((text, context) =>
        {
            if (Typed.Clean(text) is { Length: > 0 } typed && !PartText.NutClass(typed, out _, out var problem))
            {
                context.AddFailure(problem!);
            }
        });
        RuleFor(form => form.NutEnd).Custom((text, context) =>
        {
            if (PartText.NutEnd(Typed.Clean(text), out var end, out _) && end.ClosedDepth is { } depth
                && PartText.Length(Typed.Clean(context.InstanceToValidate.NutThread), out var thread, out _) && depth < thread)
            {
                context.AddFailure("A closed nut is at least as deep as its thread. Measure both again.");
            }
        });
    }

    private void Value<T>(Expression<Func<StackForm, string>> field, PartReading<T> read, string missing) => RuleFor(field).Custom((text, context) =>
    {
        var typed = Typed.Clean(text);
        if (typed.Length == 0)
        {
            context.AddFailure(missing);
        }
        else if (typed.Length > WheelStackRow.LengthLength)
        {
            context.AddFailure($"It takes at most {WheelStackRow.LengthLength} letters. Shorten it.");
        }
        else if (!read(typed, out _, out var problem))
        {
            context.AddFailure(problem!);
        }
    });
}
