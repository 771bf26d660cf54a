using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Data.Parts;

internal sealed class PartImportDraftConfiguration : IEntityTypeConfiguration<PartImportDraft>
{
    public void Configure(EntityTypeBuilder<PartImportDraft> builder)
    {
        builder.ToTable("PartImportDrafts");
        builder.HasKey(draft => draft.Id);
        builder.Property(draft => draft.Id).ValueGeneratedNever();
        builder.Property(draft => draft.Name).HasMaxLength(PartImportDraft.NameLength);
        builder.HasIndex(draft => draft.By).IsUnique();
        builder.HasOne<Person>().WithMany().HasForeignKey(draft => draft.By).OnDelete(DeleteBehavior.Restrict);
    }
}
