using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Parts;

internal sealed class OptionValueConfiguration : IEntityTypeConfiguration<OptionValue>
{
    public void Configure(EntityTypeBuilder<OptionValue> builder)
    {
        builder.ToTable("PartOptionValues");
        builder.HasKey(value => new { value.OptionId, value.Property });
        builder.Property(value => value.Property).HasConversion<string>().HasMaxLength(20);
        builder.Property(value => value.Text).HasMaxLength(OptionValue.TextLength);
        builder.Property(value => value.Source).HasMaxLength(OptionValue.SourceLength);
    }
}
