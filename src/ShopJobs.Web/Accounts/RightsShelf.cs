using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Accounts;

/// <summary>Who may do what on a day: the rights of a person on a day of the shop, none for a person who has left.</summary>
public static class RightsShelf
{
    // A line for each right: its name, first day, and last day where it has one.
    private const string OfPerson = """
        SELECT group_concat("Right" || ' ' || "From" || ' ' || ifnull("To", ''), char(10)) AS "Value"
        FROM PersonRights JOIN People ON People.Id = PersonRights.PersonId WHERE People.Id = $1 AND People.Active = 1
        """;

    /// <summary>Takes a context so that a change can ask again inside its own transaction.</summary>
    public static async Task<IReadOnlySet<Right>> RightsOfAsync(
        this ShopDbContext shop, PersonId person, DateOnly day, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var lines = await shop.Database.SqlQueryRaw<string?>(OfPerson, new SqliteParameter("$1", person.Value)).ToListAsync(cancellation);
        return HeldOn(day, lines[0]);
    }

    /// <summary>For a decision: the rights are read again before it is written.</summary>
    internal static IReadOnlySet<Right> RightsOf(this LogbookReader reader, PersonId person, DateOnly day) =>
        HeldOn(day, reader.Row($"rights:{person.Value}", OfPerson, [person.Value], lines => lines as string));

    private static HashSet<Right> HeldOn(DateOnly day, string? lines) =>
        [.. (lines ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Read).Where(right => right.HoldsOn(day)).Select(right => right.Right)];

    private static PersonRight Read(string line)
    {
        var parts = line.Split(' ');
        return new PersonRight { Right = Enum.Parse<Right>(parts[0]), From = Day(parts[1]), To = parts[2].Length == 0 ? null : Day(parts[2]) };
    }

    private static DateOnly Day(string text) => DateOnly.ParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
