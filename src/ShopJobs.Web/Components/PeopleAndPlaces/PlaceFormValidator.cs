using FluentValidation;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Shop;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

public sealed class PlaceFormValidator : AbstractValidator<PlaceForm>
{
    public PlaceFormValidator()
    {
        RuleFor(form => form.Name)
            .NotEmpty().WithMessage("Write what the shop calls the place, for example Lift C.")
            .MaximumLength(PlaceRow.NameLength).WithMessage($"A name takes at most {PlaceRow.NameLength} letters. Shorten it.")
            .ReadsPlainly();
        RuleFor(form => form.Kind).IsEnumName(typeof(PlaceKind)).WithMessage("Choose what it is: a lift holds one car, the others several.");
    }
}
