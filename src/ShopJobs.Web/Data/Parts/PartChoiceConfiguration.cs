using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Data.Parts;

internal sealed class PartChoiceConfiguration : IEntityTypeConfiguration<PartChoice>
{
    public void Configure(EntityTypeBuilder<PartChoice> builder)
    {
        builder.ToTable("PartChoices");
        builder.HasKey(choice => choice.Number);
        builder.Property(choice => choice.GroupId).HasMaxLength(OptionRow.GroupLength);
        builder.Property(choice => choice.Option).HasMaxLength((2 * OptionRow.NameLength) + 1);
        builder.Property(choice => choice.Reason).HasMaxLength(PartChoice.ReasonLength);
        builder.Property(choice => choice.Mark).HasMaxLength(PartChoice.MarkLength);
        builder.HasIndex(choice => new { choice.JobId, choice.GroupId });
        builder.HasOne<Job>().WithMany().HasForeignKey(choice => choice.JobId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Person>().WithMany().HasForeignKey(choice => choice.By).OnDelete(DeleteBehavior.Restrict);
    }
}
