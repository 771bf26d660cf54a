using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Procedures;

internal sealed class JointRegisterRevisionConfiguration : IEntityTypeConfiguration<JointRegisterRevision>
{
    public void Configure(EntityTypeBuilder<JointRegisterRevision> builder)
    {
        builder.HasKey(register => register.Digest);
        builder.Property(register => register.Digest).HasMaxLength(64);
        builder.HasIndex(register => register.Current).IsUnique().HasFilter("\"Current\" = 1");
    }
}
