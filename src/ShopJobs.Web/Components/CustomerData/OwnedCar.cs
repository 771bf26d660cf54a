using System.Globalization;
using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>A car that is or was a customer's.</summary>
/// <param name="From">Until when it was somebody else's, UTC; null where nobody's before is known.</param>
/// <param name="Until">When it got another owner, UTC; null while it is the customer's.</param>
public sealed record OwnedCar(CarId Car, string Name, DateTime? From, DateTime? Until)
{
    // One line a car: id, from, until, whether it counts as here without a visit, name.
    private const string Lines = """
        SELECT coalesce(group_concat(line, char(10)), '') FROM (
            SELECT Cars.Id || '|' || coalesce((SELECT max(before.Until) FROM OwnersBefore before WHERE before.CarId = Cars.Id), '') || '||' || Cars.CountsAsHere || '|' || replace(Cars.Name, char(10), ' ') AS line
            FROM Cars WHERE Cars.CustomerId = $customer
            UNION ALL
            SELECT was.CarId || '|' || coalesce((SELECT max(before.Until) FROM OwnersBefore before WHERE before.CarId = was.CarId AND before.Until < was.Until), '')
                || '|' || was.Until || '|' || Cars.CountsAsHere || '|' || replace(Cars.Name, char(10), ' ')
            FROM OwnersBefore was JOIN Cars ON Cars.Id = was.CarId WHERE was.CustomerId = $customer
            ORDER BY 1)
        """;

    /// <summary>While its logbook has no visit, it counts as here.</summary>
    public bool CountsAsHere { get; init; }

    /// <summary>True while it is the customer's.</summary>
    public bool IsTheirs => Until is null;

    /// <summary>True for what happened while it was the customer's.</summary>
    public bool Covers(DateTime at) => !(at <= From) && !(at > Until);

    /// <summary>Every car of a customer, those that were sold too.</summary>
    internal static IReadOnlyList<OwnedCar> Of(LogbookReader reader, CustomerId customer)
    {
        var lines = reader.Row($"owned:{customer.Value}", connection => Read(connection, customer));
        return [.. lines.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split('|', 5)).Select(parts =>
            new OwnedCar(new CarId(Guid.Parse(parts[0])), parts[4], Instant(parts[1]), Instant(parts[2])) { CountsAsHere = parts[3] == "1" })];
    }

    private static string Read(SqliteConnection connection, CustomerId customer)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Lines;
        command.Parameters.AddWithValue("$customer", customer.Value);
        return (string)command.ExecuteScalar()!;
    }

    private static DateTime? Instant(string text) => text.Length == 0
        ? null
        : DateTime.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal);
}
