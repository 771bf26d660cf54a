using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Web.Data.Cars;

namespace ShopJobs.Web.Data.Parts;

internal sealed class WheelStackRowConfiguration : IEntityTypeConfiguration<WheelStackRow>
{
    public void Configure(EntityTypeBuilder<WheelStackRow> builder)
    {
        builder.ToTable("WheelStacks");
        builder.HasKey(stack => stack.Id);
        builder.Property(stack => stack.Id).ValueGeneratedNever();
        builder.Property(stack => stack.Name).HasMaxLength(WheelStackRow.NameLength).UseCollation("NOCASE");
        builder.Property(stack => stack.HubFlange).HasMaxLength(WheelStackRow.LengthLength);
        builder.Property(stack => stack.DiscHat).HasMaxLength(WheelStackRow.LengthLength);
        builder.Property(stack => stack.Spacer).HasMaxLength(WheelStackRow.LengthLength);
        builder.Property(stack => stack.WheelPad).HasMaxLength(WheelStackRow.LengthLength);
        builder.Property(stack => stack.Washer).HasMaxLength(WheelStackRow.LengthLength);
        builder.Property(stack => stack.NutThread).HasMaxLength(WheelStackRow.LengthLength);
        builder.Property(stack => stack.ClosedNutDepth).HasMaxLength(WheelStackRow.LengthLength);
        builder.Property(stack => stack.WheelSeat).HasMaxLength(WheelStackRow.SeatLength);
        builder.Property(stack => stack.NutSeat).HasMaxLength(WheelStackRow.SeatLength);
        builder.Property(stack => stack.NutClass).HasMaxLength(WheelStackRow.SeatLength);
        builder.Property(stack => stack.Revision).IsConcurrencyToken();
        builder.HasIndex(stack => new { stack.CarId, stack.Name }).IsUnique();
        builder.HasOne<Car>().WithMany().HasForeignKey(stack => stack.CarId).OnDelete(DeleteBehavior.Restrict);
    }
}
