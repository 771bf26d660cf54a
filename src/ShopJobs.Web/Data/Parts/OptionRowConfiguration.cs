using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.Jobs;

namespace ShopJobs.Web.Data.Parts;

internal sealed class OptionRowConfiguration : IEntityTypeConfiguration<OptionRow>
{
    public void Configure(EntityTypeBuilder<OptionRow> builder)
    {
        builder.ToTable("PartOptions");
        builder.HasKey(option => option.Id);
        builder.Property(option => option.Id).ValueGeneratedNever();
        builder.Property(option => option.GroupId).HasMaxLength(OptionRow.GroupLength);
        builder.Property(option => option.Name).HasMaxLength(OptionRow.NameLength).UseCollation("NOCASE");
        builder.Property(option => option.Maker).HasMaxLength(OptionRow.NameLength).UseCollation("NOCASE");
        builder.Property(option => option.Evidence).HasConversion<string>().HasMaxLength(20);
        builder.Property(option => option.Revision).IsConcurrencyToken();
        builder.HasIndex(option => new { option.JobId, option.GroupId, option.Maker, option.Name }).IsUnique();
        builder.HasOne<Job>().WithMany().HasForeignKey(option => option.JobId).OnDelete(DeleteBehavior.Restrict);
        builder.HasMany(option => option.Values).WithOne().HasForeignKey(value => value.OptionId).OnDelete(DeleteBehavior.Cascade);
    }
}
