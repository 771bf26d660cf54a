using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;

namespace ShopJobs.Web.Components.Cars;

/// <summary>A customer as the lead types it. The id is made with the form, so sending twice makes one customer.</summary>
public sealed class CustomerForm
{
    public CustomerId Id { get; init; } = new(Guid.NewGuid());

    /// <summary>Revision of the row the form was filled from; empty for a new customer.</summary>
    public Guid Revision { get; set; }

    public string Name { get; set; } = "";

    public string Contact { get; set; } = "";

    public static CustomerForm Of(Customer customer) => new()
    {
        Id = customer.Id,
        Revision = customer.Revision,
        Name = customer.Name,
        Contact = customer.Contact,
    };
}
