using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.People;

internal sealed class NameBeforeConfiguration : IEntityTypeConfiguration<NameBefore>
{
    public void Configure(EntityTypeBuilder<NameBefore> builder)
    {
        builder.ToTable("NamesBefore");
        builder.HasKey(name => name.Id);
        builder.Property(name => name.Id).ValueGeneratedNever();
        builder.Property(name => name.Name).HasMaxLength(Person.NameLength);
        builder.HasIndex(name => new { name.PersonId, name.Until });
        builder.HasOne<Person>().WithMany().HasForeignKey(name => name.PersonId).OnDelete(DeleteBehavior.Restrict);
    }
}
