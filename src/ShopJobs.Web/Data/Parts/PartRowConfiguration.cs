using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Parts;

internal sealed class PartRowConfiguration : IEntityTypeConfiguration<PartRow>
{
    public void Configure(EntityTypeBuilder<PartRow> builder)
    {
        builder.ToTable("Parts");
        builder.HasKey(part => part.Id);
        builder.Property(part => part.Id).ValueGeneratedNever();
        builder.Property(part => part.Number).HasMaxLength(PartRow.NumberLength);
        builder.Property(part => part.Maker).HasMaxLength(PartRow.MakerLength);
        builder.Property(part => part.Key).HasMaxLength(PartRow.KeyLength);
        builder.Property(part => part.Name).HasMaxLength(PartRow.NameLength);
        builder.Property(part => part.Fills).HasMaxLength(PartRow.FillsLength);
        builder.Property(part => part.Thread).HasMaxLength(PartRow.ThreadLength);
        builder.Property(part => part.Strength).HasMaxLength(PartRow.StrengthLength);
        builder.Property(part => part.Currency).HasMaxLength(PartRow.CurrencyLength);
        builder.Property(part => part.Revision).IsConcurrencyToken();
        builder.HasIndex(part => part.Key).IsUnique();
    }
}
