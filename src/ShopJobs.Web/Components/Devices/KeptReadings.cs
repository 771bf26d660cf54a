using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Devices;

/// <summary>Finds the record of a reading by the command under which it was sent.</summary>
public sealed class KeptReadings(LogbookSnapshots snapshots)
{
    /// <summary>The pull that this tool's command recorded; null where it recorded none.</summary>
    public TorqueRecorded? Find(ToolId tool, CommandId command) => snapshots.Read(reader =>
        reader.Row(
            $"reading:{command.Value}",
            "SELECT owner || ' ' || number FROM entries WHERE tool = $1 AND command = $2 AND kind = 'torque-recorded'",
            [tool.Value, command.Value],
            found => found as string) is { } entry ? Read(reader, entry) : null);

    /// <summary>True where the command was used, for whatever it was.</summary>
    public bool IsUsed(CommandId command) => snapshots.Read(reader => reader.Row(
        $"used:{command.Value}", "SELECT 1 FROM command_outcomes WHERE command = $1", [command.Value], found => found is not null));

    private static TorqueRecorded? Read(LogbookReader reader, string entry)
    {
        var parts = entry.Split(' ');
        var car = Folders.LogbookOf(new CarId(Guid.Parse(parts[0], CultureInfo.InvariantCulture)));
        return Folders.Read(reader.Entries(car, long.Parse(parts[1], CultureInfo.InvariantCulture) - 1, 1)[0]).Entry as TorqueRecorded;
    }
}
