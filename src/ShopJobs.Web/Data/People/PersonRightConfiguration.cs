using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.People;

internal sealed class PersonRightConfiguration : IEntityTypeConfiguration<PersonRight>
{
    public void Configure(EntityTypeBuilder<PersonRight> builder)
    {
        builder.ToTable("PersonRights");
        builder.HasKey(right => right.Id);
        builder.Property(right => right.Id).ValueGeneratedNever();
        builder.Property(right => right.Right).HasConversion<string>().HasMaxLength(20);
        builder.HasIndex(right => new { right.PersonId, right.Right });
    }
}
