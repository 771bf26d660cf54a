using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>Who used a tool, by the entries of every car. The copied columns give candidates, the entries themselves the verdict.</summary>
internal static class ToolUsers
{
    /// <summary>True when the person recorded work with the tool in the time that a doubt covers, or helped with it.</summary>
    public static bool HasUsed(LogbookReader reader, ToolId tool, PersonId person, DoubtRaised doubt) => reader.Row(
            $"used-on-cars:{tool.Value}",
            """
            SELECT group_concat(owner || ' ' || number, ';') FROM
            (SELECT owner, number FROM entries WHERE tool = $1 AND owner_kind = 'car' ORDER BY owner, number)
            """,
            [tool.Value],
            found => found as string ?? "")
        .Split(';', StringSplitOptions.RemoveEmptyEntries)
        .Select(entry => Read(reader, entry))
        .Any(entry => IsOf(entry, person) && WorkOf(entry) is { } work && doubt.Covers(work));

    /// <summary>Pulls made with a tool since its last good calibration, on every car; each nut of a re-torque is one.</summary>
    public static int PullsWith(LogbookReader reader, ToolId tool)
    {
        var since = reader.FoldAsFarAsReadable(Folders.LogbookOf(tool), Folders.Tool).State.LastGoodAt ?? DateTime.UnixEpoch;
        return reader.Row(
            $"pulls-with:{tool.Value}",
            """
            SELECT sum(CASE kind WHEN 'settled' THEN json_array_length(CAST(envelope AS TEXT), '$.payload.positions') ELSE 1 END)
            FROM entries WHERE tool = $1 AND kind IN ('torque-recorded', 'settled') AND at > $2
            """,
            [tool.Value, MicrosecondClock.ToStored(since)],
            pulls => pulls is long count ? (int)Math.Min(count, int.MaxValue) : 0);
    }

    private static Recorded Read(LogbookReader reader, string entry)
    {
        var space = entry.IndexOf(' ', StringComparison.Ordinal);
        var car = new CarId(Guid.Parse(entry.AsSpan(0, space), CultureInfo.InvariantCulture));
        var number = long.Parse(entry.AsSpan(space + 1), CultureInfo.InvariantCulture);
        return Folders.Read(reader.Entries(Folders.LogbookOf(car), number - 1, 1)[0]);
    }

    private static bool IsOf(Recorded entry, PersonId person) =>
        entry.Person == person || (entry.Entry is TorqueRecorded { Helpers: var helpers } && helpers.Contains(person));

    private static ToolWork? WorkOf(Recorded entry) => entry.Entry switch
    {
        TorqueRecorded pull => ToolWork.Of(pull, entry.At),
        Settled settled => new ToolWork(settled.Tool, settled.On, entry.At, settled.ToolEntry),
        ResultRecorded result => ToolWork.Of(result, entry.At),
        _ => null,
    };
}
