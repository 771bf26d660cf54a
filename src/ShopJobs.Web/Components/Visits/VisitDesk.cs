using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Visits;

/// <summary>Coming in, moving and leaving: the entry and the car's place in its row stand or fall together.</summary>
public sealed class VisitDesk(CarDesk desk, WhoIsHere here, ShopClock clock)
{
    /// <summary>Runs a command of a visit.</summary>
    /// <param name="place">Key of the place where the car stands after it; empty where it has left.</param>
    public async Task<DeskAnswer> RunAsync(
        CarId car, Report command, string place, IReadOnlyList<NewContent?> contents, CancellationToken cancellation = default) =>
        await here.ActingAsync(cancellation) is { } present
            ? await desk.RunAsync(
                car, new CommandId(Guid.NewGuid()), present, command, [.. contents.OfType<NewContent>()],
                transaction => Put(transaction, car, place, present.Person), cancellation)
            : DeskAnswer.Failed(ShopChange.Locked);

    private void Put(SqliteTransaction transaction, CarId car, string place, PersonId by)
    {
        using var update = transaction.Connection!.CreateCommand();
        update.Transaction = transaction;
        // A car that comes in is not put away any more, nor is its owner.
        update.CommandText = """
            UPDATE Customers SET RetiredAt = NULL WHERE RetiredAt IS NOT NULL AND Id = (SELECT CustomerId FROM Cars WHERE Id = $car);
            UPDATE Cars SET Place = $place, RetiredAt = NULL, ChangedAt = $at, ChangedBy = $by, Revision = $revision WHERE Id = $car
            """;
        update.Parameters.AddWithValue("$place", place);
        update.Parameters.AddWithValue("$at", clock.Now);
        update.Parameters.AddWithValue("$by", by.Value);
        update.Parameters.AddWithValue("$revision", Guid.NewGuid());
        update.Parameters.AddWithValue("$car", car.Value);
        if (update.ExecuteNonQuery() < 1)
        {
            throw new InvalidOperationException($"The row of car {car.Value} is gone.");
        }
    }
}
