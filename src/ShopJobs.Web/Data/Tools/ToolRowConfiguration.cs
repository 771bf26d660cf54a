using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Tools;

internal sealed class ToolRowConfiguration : IEntityTypeConfiguration<ToolRow>
{
    public void Configure(EntityTypeBuilder<ToolRow> builder)
    {
        builder.ToTable("Tools");
        builder.HasKey(tool => tool.Id);
        builder.Property(tool => tool.Id).ValueGeneratedNever();
        builder.Property(tool => tool.Name).HasMaxLength(40).UseCollation("NOCASE");
        builder.Property(tool => tool.Revision).IsConcurrencyToken();
        builder.HasIndex(tool => tool.Name).IsUnique();
    }
}
