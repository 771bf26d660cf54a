using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Data.Procedures;

namespace ShopJobs.Web.Data.Jobs;

internal sealed class JobConfiguration : IEntityTypeConfiguration<Job>
{
    public void Configure(EntityTypeBuilder<Job> builder)
    {
        builder.HasKey(job => job.Id);
        builder.Property(job => job.Id).ValueGeneratedNever();
        builder.Property(job => job.Title).HasMaxLength(200);
        builder.HasIndex(job => job.CarId);
        builder.HasOne<Car>().WithMany().HasForeignKey(job => job.CarId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<ProcedureRevision>().WithMany().HasForeignKey(job => job.ProcedureDigest).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<JointRegisterRevision>().WithMany().HasForeignKey(job => job.RegisterDigest).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Person>().WithMany().HasForeignKey(job => job.StartedBy).OnDelete(DeleteBehavior.Restrict);
    }
}
