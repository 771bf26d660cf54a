using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Cars;

internal sealed class OwnerBeforeConfiguration : IEntityTypeConfiguration<OwnerBefore>
{
    public void Configure(EntityTypeBuilder<OwnerBefore> builder)
    {
        builder.HasKey(owner => owner.Id);
        builder.Property(owner => owner.Id).ValueGeneratedNever();
        builder.HasIndex(owner => new { owner.CarId, owner.Until });
        builder.HasOne<Car>().WithMany().HasForeignKey(owner => owner.CarId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Customer>().WithMany().HasForeignKey(owner => owner.CustomerId).OnDelete(DeleteBehavior.Restrict);
    }
}
