using FluentValidation;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.FirstStart;

public sealed class NewShopValidator : AbstractValidator<NewShop>
{
    public const int ShopNameLength = 60;

    public NewShopValidator()
    {
        RuleFor(form => form.ShopName).NotEmpty().WithMessage("Give the shop a name.")
            .MaximumLength(ShopNameLength).WithMessage($"The shop's name has at most {ShopNameLength} letters.").ReadsPlainly();
        RuleFor(form => form.LeadName).NotEmpty().WithMessage("Give the name of the lead.")
            .MaximumLength(Person.NameLength).WithMessage($"A name has at most {Person.NameLength} letters.").ReadsPlainly();
        RuleFor(form => form.Zone).Must(zone => TimeZoneInfo.TryFindSystemTimeZoneById(zone ?? "", out _))
            .WithMessage("Pick the shop's time zone, for example Europe/Berlin.");
    }
}
