using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;

namespace ShopJobs.Web.Data.Procedures;

internal sealed class ProcedureRevisionConfiguration : IEntityTypeConfiguration<ProcedureRevision>
{
    public void Configure(EntityTypeBuilder<ProcedureRevision> builder)
    {
        builder.HasKey(procedure => procedure.Digest);
        builder.Property(procedure => procedure.Digest).HasMaxLength(64);
        builder.Property(procedure => procedure.Code).HasMaxLength(40);
        builder.Property(procedure => procedure.Title).HasMaxLength(200);
        builder.Property(procedure => procedure.Revision).HasMaxLength(40);
        builder.HasIndex(procedure => new { procedure.Code, procedure.Revision }).IsUnique();
    }
}
