using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.People;

internal sealed class TabletConfiguration : IEntityTypeConfiguration<Tablet>
{
    public void Configure(EntityTypeBuilder<Tablet> builder)
    {
        builder.HasKey(tablet => tablet.Id);
        builder.Property(tablet => tablet.Id).ValueGeneratedNever();
        builder.Property(tablet => tablet.Name).HasMaxLength(Tablet.NameLength);
        builder.HasIndex(tablet => tablet.TokenHash).IsUnique();
        builder.HasOne<Person>().WithMany().HasForeignKey(tablet => tablet.EnrolledBy).OnDelete(DeleteBehavior.Restrict);
    }
}
