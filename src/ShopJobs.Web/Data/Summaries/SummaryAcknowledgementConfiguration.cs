using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.Cars;

namespace ShopJobs.Web.Data.Summaries;

internal sealed class SummaryAcknowledgementConfiguration : IEntityTypeConfiguration<SummaryAcknowledgement>
{
    public void Configure(EntityTypeBuilder<SummaryAcknowledgement> builder)
    {
        builder.HasKey(read => read.Id);
        builder.Property(read => read.Id).ValueGeneratedNever();
        builder.Property(read => read.Words).HasMaxLength(SummaryAcknowledgement.WordsLength);
        builder.HasIndex(read => new { read.CarId, read.CustomerId, read.Version }).IsUnique();
        builder.HasOne<Car>().WithMany().HasForeignKey(read => read.CarId).OnDelete(DeleteBehavior.Restrict);
        builder.HasOne<Customer>().WithMany().HasForeignKey(read => read.CustomerId).OnDelete(DeleteBehavior.Restrict);
    }
}
