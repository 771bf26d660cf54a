using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.People;

internal sealed class PersonSessionConfiguration : IEntityTypeConfiguration<PersonSession>
{
    public void Configure(EntityTypeBuilder<PersonSession> builder)
    {
        builder.HasKey(session => session.Id);
        builder.Property(session => session.Id).ValueGeneratedNever();
        builder.HasIndex(session => new { session.TabletId, session.EndedAt });
        builder.HasOne<Person>().WithMany().HasForeignKey(session => session.PersonId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Tablet>().WithMany().HasForeignKey(session => session.TabletId).OnDelete(DeleteBehavior.Restrict);
    }
}
