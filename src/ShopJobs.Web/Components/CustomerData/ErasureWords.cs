using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>What erasing takes, what it should wait for and what stands against it, in words.</summary>
internal static class ErasureWords
{
    public static IReadOnlyList<string> Goes(LogbookReader reader, CustomerId customer, IReadOnlyList<OwnedEntries> held, IReadOnlyCollection<ContentDigest> contents)
    {
        var photos = held.SelectMany(car => car.Photos).Intersect(contents).Count();
        var texts = contents.Count - photos;
        var theirs = held.Where(car => car.Car.IsTheirs).Select(car => car.Car.Name).ToList();
        var links = Count(reader, "links", "SELECT count(*) FROM CustomerLinks JOIN Cars ON Cars.Id = CarId WHERE CustomerId = $1 AND RevokedAt IS NULL", customer);
        var said = Count(reader, "said", "SELECT count(*) FROM Acknowledgements WHERE CustomerId = $1 AND Words <> ''", customer);
        return
        [
            "Name, telephone and mail. A number takes their place.",
            .. theirs.Count > 0 ? [$"Plate, chassis number and note, of {string.Join(", ", theirs)}."] : Array.Empty<string>(),
            .. held.Count > 0 ? [$"What the customer asked for, on every job of {string.Join(", ", held.Select(car => car.Car.Name).Distinct())}."] : Array.Empty<string>(),
            .. texts > 0 ? [Number(texts, "text or page", "texts and pages") + " beside the logbooks: why the car came, who took it, what the customer accepted or was told, and every summary that was issued."] : Array.Empty<string>(),
            .. photos > 0 ? [Number(photos, "photograph", "photographs") + " of the car. What people of the shop wrote to them stays."] : Array.Empty<string>(),
            .. said > 0 ? [Number(said, "word", "words") + " with which the customer confirmed a summary. That it was confirmed, and when, stays."] : Array.Empty<string>(),
            .. links > 0 ? [Number(links, "customer's link ends", "customer's links end") + " at once."] : Array.Empty<string>(),
        ];
    }

    /// <summary>What only the customer can be told, and nobody can tell him afterwards.</summary>
    public static IReadOnlyList<string> Cautions(IEnumerable<OwnedEntries> held, IReadOnlyDictionary<ToolId, ToolState> tools)
    {
        ToolState Tool(ToolId id) => tools.GetValueOrDefault(id, ToolState.Empty);
        var lines = new List<string>();
        foreach (var car in held.Where(car => car.Car.IsTheirs))
        {
            var books = car.State.Positions.Values;
            if (books.Any(car.State.OwesReTorque))
            {
                lines.Add($"First: a re-torque is due on {car.Car.Name}. Afterwards nobody here can reach the customer about it.");
            }

            if (books.Any(book => !book.Holds.IsEmpty || car.State.DoubtsOn(book, Tool).Any()))
            {
                lines.Add($"First: something on {car.Car.Name} is held or in doubt. Tell the customer; afterwards nobody here can.");
            }
        }

        return lines;
    }

    public static IReadOnlyList<string> Refusals(IEnumerable<OwnedEntries> held)
    {
        var lines = new List<string>();
        foreach (var car in held)
        {
            if (car.Unreadable is { } why)
            {
                lines.Add($"The logbook of {car.Car.Name} can't be read to its end. {why} That is put right first.");
            }

            if (car.Car.IsTheirs && (car.State.Visit?.IsOpen ?? car.Car.CountsAsHere))
            {
                lines.Add($"{car.Car.Name} is here. Erase after it has left, so that somebody can be called about it.");
            }

            if (car.Car.IsTheirs && car.State.RunningJobs.Any())
            {
                lines.Add($"Work on {car.Car.Name} is not finished. End it or cancel it first.");
            }
        }

        return lines;
    }

    private static int Count(LogbookReader reader, string what, string sql, CustomerId customer) =>
        reader.Row($"{what}:{customer.Value}", sql, [customer.Value], count => (int)(long)count!);

    private static string Number(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
}
