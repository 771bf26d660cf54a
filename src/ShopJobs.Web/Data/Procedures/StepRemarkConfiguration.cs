using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Data.Procedures;

internal sealed class StepRemarkConfiguration : IEntityTypeConfiguration<StepRemark>
{
    public void Configure(EntityTypeBuilder<StepRemark> builder)
    {
        builder.HasKey(remark => remark.Id);
        builder.Property(remark => remark.Id).ValueGeneratedNever();
        builder.Property(remark => remark.ProcedureDigest).HasMaxLength(64);
        builder.Property(remark => remark.StepId).HasMaxLength(60);
        builder.Property(remark => remark.Fault).HasConversion<string>().HasMaxLength(20);
        builder.Property(remark => remark.Words).HasMaxLength(StepRemark.WordsLength);
        builder.Property(remark => remark.Answer).HasMaxLength(StepRemark.WordsLength);
        builder.HasIndex(remark => remark.AnsweredAt);
        builder.HasOne<ProcedureRevision>().WithMany().HasForeignKey(remark => remark.ProcedureDigest).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Car>().WithMany().HasForeignKey(remark => remark.CarId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Person>().WithMany().HasForeignKey(remark => remark.By).OnDelete(DeleteBehavior.Restrict);
    }
}
