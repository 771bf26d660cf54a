using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Cars;

internal sealed class CustomerConfiguration : IEntityTypeConfiguration<Customer>
{
    public void Configure(EntityTypeBuilder<Customer> builder)
    {
        builder.HasKey(customer => customer.Id);
        builder.Property(customer => customer.Id).ValueGeneratedNever();
        builder.Property(customer => customer.Name).HasMaxLength(Customer.NameLength).UseCollation("NOCASE");
        builder.Property(customer => customer.Contact).HasMaxLength(Customer.ContactLength);
        builder.Property(customer => customer.Revision).IsConcurrencyToken();
        builder.HasIndex(customer => customer.Name);
    }
}
