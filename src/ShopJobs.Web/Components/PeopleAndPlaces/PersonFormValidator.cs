using FluentValidation;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

public sealed class PersonFormValidator : AbstractValidator<PersonForm>
{
    public PersonFormValidator()
    {
        RuleFor(form => form.Name)
            .NotEmpty().WithMessage("Write the person's name.")
            .MaximumLength(Person.NameLength).WithMessage($"A name takes at most {Person.NameLength} letters. Shorten it.")
            .ReadsPlainly();
        RuleFor(form => form.Rights)
            .Must(rights => !rights.Any(one => rights.Any(other => RightSets.Exclude(one, other))))
            .WithMessage("A trainee holds no other right. Leave “learn” alone, or untick it.");
    }
}
