using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Shop;

internal sealed class ShopSettingConfiguration : IEntityTypeConfiguration<ShopSetting>
{
    public void Configure(EntityTypeBuilder<ShopSetting> builder)
    {
        builder.HasKey(setting => setting.Key);
        builder.Property(setting => setting.Key).HasMaxLength(40);
        builder.Property(setting => setting.Value).HasMaxLength(400);
    }
}
