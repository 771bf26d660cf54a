using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Devices;

/// <summary>
/// Takes a reading that a tool sent to the one tablet that stands at a pull with this tool picked. That tablet's person, session and step
/// report it, by the same way and with the same holds as what is typed there; nothing is recorded here.
/// </summary>
public sealed class ReadingDesk(LogbookSnapshots snapshots, PickedTools picked, KeptReadings kept, TimeProvider time)
{
    /// <summary>So long a tablet may take to answer; then the reading is waiting.</summary>
    internal static readonly TimeSpan Patience = TimeSpan.FromSeconds(8);

    /// <summary>What became of the reading.</summary>
    public async Task<DeviceAnswer> OfferAsync(ToolId tool, DeviceReading sent, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(sent);
        var state = snapshots.Read(reader => reader.FoldAsFarAsReadable(Folders.LogbookOf(tool), Folders.Tool).State);
        if (state is not { Tool: { } described, RetiredBy: 0 })
        {
            return DeviceAnswer.No("This tool is out of use for good.");
        }

        if (sent.Command is { } command && kept.Find(tool, new CommandId(command)) is { } before)
        {
            return sent.IsOf(before) ? DeviceAnswer.Of(before, before: true) : DeviceAnswer.No("This command id was used for another reading.");
        }

        var (reading, problem) = sent.Of(described, time.GetUtcNow().UtcDateTime);
        return reading is null ? DeviceAnswer.No(problem!)
            : kept.IsUsed(reading.Id) ? DeviceAnswer.No("This command id was used for something else.")
            : await OfferAsync(described.Name, tool, reading, cancellation);
    }

    private async Task<DeviceAnswer> OfferAsync(string name, ToolId tool, OfferedReading reading, CancellationToken cancellation)
    {
        var pages = picked.With(tool);
        if (pages.Select(page => page.Tablet).Distinct().Count() is var tablets && tablets != 1)
        {
            return DeviceAnswer.No(tablets == 0
                ? $"No tablet is at a pull with {name} picked. Pick it there, then send the reading again."
                : $"{tablets} tablets have {name} picked, and nobody can tell which pull it was. Pick another tool on all but one, then send the reading again.");
        }

        using var patience = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        patience.CancelAfter(Patience);
        var answers = await Task.WhenAll(pages.Select(page => page.OfferAsync(reading, patience.Token)));
        return answers.MaxBy(answer => answer.Outcome)! switch
        {
            { Outcome: TabletOutcome.Settled } when kept.Find(tool, reading.Id) is { } pull => DeviceAnswer.Of(pull, before: false),
            { Outcome: TabletOutcome.Away } => DeviceAnswer.No($"The tablet with {name} picked does not show the step now. Go back to it, then send the reading again."),
            { Outcome: TabletOutcome.Refused } refused => new DeviceAnswer(ReadingOutcome.Refused, false, refused.Words),
            var waiting => new DeviceAnswer(ReadingOutcome.Waiting, false, waiting.Words),
        };
    }
}
