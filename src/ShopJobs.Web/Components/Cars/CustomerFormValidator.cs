using FluentValidation;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.Cars;

public sealed class CustomerFormValidator : AbstractValidator<CustomerForm>
{
    public CustomerFormValidator()
    {
        RuleFor(form => form.Name).NotEmpty().WithMessage("Write the customer's name.")
            .MaximumLength(Customer.NameLength).WithMessage($"A name takes at most {Customer.NameLength} letters. Shorten it.").ReadsPlainly();
        RuleFor(form => form.Contact)
            .MaximumLength(Customer.ContactLength).WithMessage($"Telephone and mail take at most {Customer.ContactLength} letters. Shorten it.");
    }
}
