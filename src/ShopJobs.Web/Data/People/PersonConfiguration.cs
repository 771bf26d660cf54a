using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.People;

internal sealed class PersonConfiguration : IEntityTypeConfiguration<Person>
{
    public void Configure(EntityTypeBuilder<Person> builder)
    {
        builder.HasKey(person => person.Id);
        builder.Property(person => person.Id).ValueGeneratedNever();
        builder.Property(person => person.Name).HasMaxLength(Person.NameLength).UseCollation("NOCASE");
        builder.Property(person => person.Initials).HasMaxLength(Person.InitialsLength).UseCollation("NOCASE");
        builder.Property(person => person.Revision).IsConcurrencyToken();
        builder.HasIndex(person => person.Name).IsUnique();
        builder.HasMany(person => person.Rights).WithOne().HasForeignKey(right => right.PersonId).OnDelete(DeleteBehavior.Restrict);
    }
}
