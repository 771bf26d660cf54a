using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Cars;

namespace ShopJobs.Web.Components.Cars;

/// <summary>A car as the lead types it. The id is made with the form, so sending twice makes one car.</summary>
public sealed class CarForm
{
    public CarId Id { get; init; } = new(Guid.NewGuid());

    /// <summary>Revision of the row the form was filled from; empty for a new car.</summary>
    public Guid Revision { get; set; }

    public string Name { get; set; } = "";

    public string Model { get; set; } = "";

    public string Mark { get; set; } = "";

    /// <summary>The number on its chassis, as typed.</summary>
    public string Chassis { get; set; } = "";

    public string Colour { get; set; } = "";

    public string Note { get; set; } = "";

    /// <summary>Id of the customer as text, as a select gives it.</summary>
    public string Customer { get; set; } = "";

    /// <summary>What its odometer counts in.</summary>
    public DistanceUnit Distance { get; set; }

    public static CarForm Of(Car car) => new()
    {
        Id = car.Id,
        Revision = car.Revision,
        Name = car.Name,
        Model = car.Model,
        Mark = car.Mark,
        Chassis = car.Chassis,
        Colour = car.Colour,
        Note = car.Note,
        Customer = car.CustomerId.Value.ToString(),
        Distance = car.Distance,
    };
}
