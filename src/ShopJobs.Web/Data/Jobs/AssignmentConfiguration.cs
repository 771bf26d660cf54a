using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Data.Jobs;

internal sealed class AssignmentConfiguration : IEntityTypeConfiguration<Assignment>
{
    public void Configure(EntityTypeBuilder<Assignment> builder)
    {
        builder.HasKey(assignment => assignment.Id);
        builder.Property(assignment => assignment.Id).ValueGeneratedNever();
        builder.Property(assignment => assignment.StepInstanceId).HasMaxLength(200);
        builder.HasIndex(assignment => new { assignment.JobId, assignment.To });
        builder.HasIndex(assignment => new { assignment.PersonId, assignment.To });
        builder.HasOne<Job>().WithMany().HasForeignKey(assignment => assignment.JobId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Person>().WithMany().HasForeignKey(assignment => assignment.PersonId).OnDelete(DeleteBehavior.Restrict);
    }
}
