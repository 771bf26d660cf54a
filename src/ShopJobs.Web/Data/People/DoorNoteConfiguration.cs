using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.People;

internal sealed class DoorNoteConfiguration : IEntityTypeConfiguration<DoorNote>
{
    public void Configure(EntityTypeBuilder<DoorNote> builder)
    {
        builder.HasKey(note => note.Id);
        builder.Property(note => note.Event).HasConversion<string>().HasMaxLength(20);
        builder.HasIndex(note => note.At);
        builder.HasIndex(note => new { note.PersonId, note.Event }); // asked with every command: who is tied to whom
    }
}
