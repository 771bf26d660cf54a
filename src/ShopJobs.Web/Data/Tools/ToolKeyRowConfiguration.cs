using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Tools;

internal sealed class ToolKeyRowConfiguration : IEntityTypeConfiguration<ToolKeyRow>
{
    public void Configure(EntityTypeBuilder<ToolKeyRow> builder)
    {
        builder.ToTable("ToolKeys");
        builder.HasKey(key => key.Id);
        builder.Property(key => key.Id).ValueGeneratedNever();
        builder.HasIndex(key => key.KeyHash).IsUnique();
        builder.HasIndex(key => key.ToolId).IsUnique().HasFilter("EndedAt IS NULL");
        builder.HasOne<ToolRow>().WithMany().HasForeignKey(key => key.ToolId).OnDelete(DeleteBehavior.Restrict);
    }
}
