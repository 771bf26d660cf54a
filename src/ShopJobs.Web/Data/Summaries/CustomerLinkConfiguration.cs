using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Data.Summaries;

internal sealed class CustomerLinkConfiguration : IEntityTypeConfiguration<CustomerLink>
{
    public void Configure(EntityTypeBuilder<CustomerLink> builder)
    {
        builder.HasKey(link => link.Id);
        builder.Property(link => link.Id).ValueGeneratedNever();
        builder.HasIndex(link => link.TokenHash).IsUnique();
        builder.HasIndex(link => link.CarId);
        builder.HasOne<Car>().WithMany().HasForeignKey(link => link.CarId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Person>().WithMany().HasForeignKey(link => link.CreatedBy).OnDelete(DeleteBehavior.Restrict);
    }
}
