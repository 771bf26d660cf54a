using FluentValidation;
using ShopJobs.Domain.Cars;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.Cars;

public sealed class CarFormValidator : AbstractValidator<CarForm>
{
    public CarFormValidator()
    {
        RuleFor(form => form.Name).NotEmpty().WithMessage("Give the car the name the shop calls it by, for example Blue.").ReadsPlainly();
        RuleFor(form => form.Model).NotEmpty().WithMessage("Write make and model.");
        RuleFor(form => form.Customer).Must(id => Guid.TryParse(id, out _)).WithMessage("Pick the customer; add one first if there is none.");
        RuleFor(form => form.Distance).IsInEnum().WithMessage("Pick what its odometer counts in.");
        AtMost(form => form.Name, "The name", Car.NameLength);
        AtMost(form => form.Model, "Make and model", Car.ModelLength);
        RuleFor(form => form.Chassis).Must(typed => typed.Trim().Length == 0 || ChassisNumber.Read(typed) is not null)
            .WithMessage($"A chassis number has letters, digits, points and strokes, at most {ChassisNumber.Most} of them. Read it again at the car.");
        AtMost(form => form.Mark, "The plate", Car.MarkLength);
        AtMost(form => form.Colour, "The colour", Car.ColourLength);
        AtMost(form => form.Note, "The note", Car.NoteLength);
    }

    private void AtMost(System.Linq.Expressions.Expression<Func<CarForm, string>> field, string what, int length) =>
        RuleFor(field).MaximumLength(length).WithMessage($"{what} takes at most {length} letters. Shorten it.");
}
