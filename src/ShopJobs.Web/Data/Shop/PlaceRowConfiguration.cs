using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Shop;

internal sealed class PlaceRowConfiguration : IEntityTypeConfiguration<PlaceRow>
{
    public void Configure(EntityTypeBuilder<PlaceRow> builder)
    {
        builder.ToTable("Places");
        builder.HasKey(place => place.Key);
        builder.Property(place => place.Key).HasMaxLength(PlaceRow.KeyLength);
        builder.Property(place => place.Name).HasMaxLength(PlaceRow.NameLength).UseCollation("NOCASE");
        builder.Property(place => place.Kind).HasConversion<string>().HasMaxLength(20);
        builder.Property(place => place.Revision).IsConcurrencyToken();
        builder.HasIndex(place => place.Name).IsUnique();
    }
}
