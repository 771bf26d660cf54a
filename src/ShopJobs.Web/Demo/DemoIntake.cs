using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Demo;

/// <summary>A demo car comes in and is looked at, system by system; its seats nobody has looked at yet.</summary>
internal sealed class DemoIntake(DemoTablet tablet, CarDesk cars, CarId car)
{
    private static readonly string[] Corners = ["front-left", "front-right", "rear-left", "rear-right"];

    public async Task RunAsync(string place)
    {
        if (cars.Read(car, null).State.Visit is null)
        {
            var why = NewContent.Of(Encoding.UTF8.GetBytes("Studs instead of wheel bolts, and the track wheels on, before the hill climb."));
            var things = NewContent.Of(Encoding.UTF8.GetBytes("Two keys; helmet and gloves in the boot."));
            await tablet.DoAsync(
                car,
                new ComeIn(new OdometerReading(61_840, DistanceUnit.Kilometre), place, why.Digest) { FuelEighths = 3, Things = things.Digest, AsksAsFound = true },
                [why, things]);
        }
        else
        {
            tablet.Passed(car);
        }

        await SeenAsync("wheels", [.. Each("tread", "mm", 5.2m, 5.1m, 4.4m, 4.6m), .. Each("pressure", "bar", 2.1m, 2.1m, 2.0m, 2.0m)], ("locking", "none needed"));
        await SeenAsync("hubs", [], ("play", "none"));
        await SeenAsync("brakes", [.. Each("pad", "mm", 6.5m, 6.0m, 8m, 8m), .. Each("disc", "mm", 23.4m, 23.3m, 11.8m, 11.8m)], ("leaks", "none"), ("screws", "snapped or missing"));
        await SeenAsync("struts", [.. Each("height", "mm", 342, 344, 351, 350), new("clicks-left", 12, "clicks"), new("clicks-right", 12, "clicks")], ("leaks", "none"));
        await SeenAsync("bars", [new("hole-left", 2, "hole"), new("hole-right", 2, "hole")], ("play", "none"));
        await SeenAsync("steering", [], ("play", "none"));
        foreach (var system in cars.Read(car, null).Now.Register.Systems.Except(["wheels", "hubs", "brakes", "struts", "bars", "steering", "seats"]))
        {
            await SeenAsync(system, [], ("state", "nothing to see"));
        }
    }

    private static IEnumerable<MeasuredValue> Each(string name, string unit, params decimal[] values) =>
        Corners.Zip(values, (corner, value) => new MeasuredValue($"{name}-{corner}", value, unit));

    private Task SeenAsync(string system, IReadOnlyList<MeasuredValue> values, params (string Name, string Text)[] notes) =>
        tablet.DoAsync(car, new RecordAsFound(system, values) { Notes = [.. notes.Select(note => new WrittenNote(note.Name, note.Text))] });
}
