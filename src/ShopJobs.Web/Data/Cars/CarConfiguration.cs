using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using ShopJobs.Domain.Cars;
using ShopJobs.Web.Data.Shop;

namespace ShopJobs.Web.Data.Cars;

internal sealed class CarConfiguration : IEntityTypeConfiguration<Car>
{
    public void Configure(EntityTypeBuilder<Car> builder)
    {
        builder.HasKey(car => car.Id);
        builder.Property(car => car.Id).ValueGeneratedNever();
        builder.Property(car => car.Name).HasMaxLength(Car.NameLength).UseCollation("NOCASE");
        builder.Property(car => car.Model).HasMaxLength(Car.ModelLength);
        builder.Property(car => car.Mark).HasMaxLength(Car.MarkLength);
        builder.Property(car => car.Chassis).HasMaxLength(ChassisNumber.Most);
        builder.Property(car => car.Colour).HasMaxLength(Car.ColourLength);
        builder.Property(car => car.Note).HasMaxLength(Car.NoteLength);
        builder.Property(car => car.Place).HasMaxLength(PlaceRow.KeyLength);
        builder.Property(car => car.Distance).HasConversion<string>().HasMaxLength(20);
        builder.Property(car => car.Revision).IsConcurrencyToken();
        builder.HasIndex(car => car.Name).IsUnique();
        builder.HasOne(car => car.Customer).WithMany().HasForeignKey(car => car.CustomerId).OnDelete(DeleteBehavior.Restrict);
    }
}
