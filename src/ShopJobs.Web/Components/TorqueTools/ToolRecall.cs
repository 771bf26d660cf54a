using System.Globalization;
using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>One position a tool tightened, as it is now.</summary>
/// <param name="Joint">Its joint as people say it: "wheel nut front-left".</param>
/// <param name="Stages">Stages done and asked, for a staged one.</param>
public sealed record RecallLine(TracedPosition Traced, string Joint, PositionState State, (int Done, int Of) Stages);

/// <summary>Everything a tool tightened on one car.</summary>
/// <param name="Unreadable">Why the car's logbook could be read only in part; null when all of it was.</param>
public sealed record CarRecall(CarId Car, string Name, IReadOnlyList<RecallLine> Lines, string? Unreadable)
{
    /// <summary>Who owns the car, and how the owner is reached.</summary>
    public string Owner { get; init; } = "";

    /// <summary>When the owner was told since the newest doubt; null where nobody did.</summary>
    public ToldOwner? Told { get; init; }

    /// <summary>Positions that wait for a decision because of this tool.</summary>
    public int InDoubt => Lines.Count(line => line.Traced.InDoubt);

    /// <summary>Positions of a class.</summary>
    public int Count(TraceClass of) => Lines.Count(line => line.Traced.Class == of);
}

/// <summary>Finds what a tool tightened, on every car. The copied tool column gives candidates, the folds give the verdict.</summary>
public sealed class ToolRecall(LogbookSnapshots snapshots, Surroundings surroundings)
{
    /// <summary>By car, the one with most live positions first; cars on which it tightened nothing since are left out.</summary>
    public IReadOnlyList<CarRecall> Of(ToolId tool) => snapshots.Read(reader =>
    {
        var state = reader.FoldAsFarAsReadable(Folders.LogbookOf(tool), Folders.Tool).State;
        var now = surroundings.Of(reader, default);
        return (IReadOnlyList<CarRecall>)[.. Candidates(reader, tool)
            .GroupBy(entry => entry.Owner)
            .Select(car => OnCar(reader, now, state, tool, new CarId(car.Key), [.. car.Select(entry => entry.Number)]))
            .Where(car => car.Lines.Count > 0 || car.Unreadable is not null)
            .OrderByDescending(car => car.Count(TraceClass.Live)).ThenBy(car => car.Name, StringComparer.OrdinalIgnoreCase)];
    });

    private static CarRecall OnCar(LogbookReader reader, Circumstances now, ToolState state, ToolId tool, CarId car, IReadOnlyList<long> numbers)
    {
        var logbook = Folders.LogbookOf(car);
        var folded = reader.FoldAsFarAsReadable(logbook, Folders.Car);
        var entries = numbers.Where(number => number <= folded.Head.Number)
            .SelectMany(number => reader.Entries(logbook, number - 1, 1)).Select(Folders.Read);
        return new CarRecall(
            car,
            NameOf(reader, car),
            [.. state.Trace(tool, folded.State, entries).Select(traced =>
                new RecallLine(
                    traced,
                    now.Name(traced.Position.Joint),
                    folded.State.StateOf(traced.Position, now.Tool),
                    folded.State.StagesOf(folded.State.Of(traced.Position))))],
            folded.Unreadable?.Message)
        {
            Owner = OwnerOf(reader, car),
            Told = state.ToldOf(car),
        };
    }

    private static List<(Guid Owner, long Number)> Candidates(LogbookReader reader, ToolId tool) =>
        reader.Row($"made-with:{tool.Value}", connection =>
        {
            using var command = connection.CreateCommand();
            command.CommandText = "SELECT owner, number FROM entries WHERE tool = $tool AND owner_kind = 'car' ORDER BY owner, number";
            command.Parameters.AddWithValue("$tool", tool.Value);
            using var rows = command.ExecuteReader();
            var found = new List<(Guid, long)>();
            while (rows.Read())
            {
                found.Add((Guid.Parse(rows.GetString(0), CultureInfo.InvariantCulture), rows.GetInt64(1)));
            }

            return found;
        });

    internal static string OwnerOf(LogbookReader reader, CarId car) => reader.Row(
        $"car-owner:{car.Value}",
        "SELECT Customers.Name || CASE Customers.Contact WHEN '' THEN ', no telephone known' ELSE ', ' || Customers.Contact END FROM Cars JOIN Customers ON Customers.Id = Cars.CustomerId WHERE Cars.Id = $1",
        [car.Value],
        owner => owner as string ?? "nobody known");

    internal static string NameOf(LogbookReader reader, CarId car) => reader.Row($"car-name:{car.Value}", connection =>
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT Name FROM Cars WHERE Id = $id";
        command.Parameters.AddWithValue("$id", car.Value);
        return command.ExecuteScalar() as string ?? "a car not in the book";
    });
}
