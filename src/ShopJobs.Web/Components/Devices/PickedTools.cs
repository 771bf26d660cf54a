using System.Collections.Immutable;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Devices;

/// <summary>What a tablet says to a reading that it is offered.</summary>
public enum TabletOutcome
{
    /// <summary>This page does not show the step, or shows something else by now.</summary>
    Away,

    /// <summary>Nobody is signed in there, or it cannot be of what is next.</summary>
    Refused,

    /// <summary>It is kept there, asked or on its way.</summary>
    Waiting,

    /// <summary>It is reported, and the logbook has answered.</summary>
    Settled,
}

/// <summary>The answer of one page of a tablet.</summary>
public sealed record TabletAnswer(TabletOutcome Outcome, IReadOnlyList<string> Words);

/// <summary>A page of a tablet that stands at a pull with a reading tool picked.</summary>
public sealed record PickedTool(ToolId Tool, DeviceId Tablet, Func<OfferedReading, CancellationToken, Task<TabletAnswer>> OfferAsync);

/// <summary>Which tablets stand at a pull, and with which reading tool. Known to this process alone, and gone with the pages.</summary>
public sealed class PickedTools
{
    private ImmutableList<PickedTool> pages = [];

    /// <summary>A page stands at a pull from now on; dispose when it does not any more.</summary>
    public IDisposable Put(PickedTool page)
    {
        ImmutableInterlocked.Update(ref pages, (all, one) => all.Add(one), page);
        return new Standing(this, page);
    }

    /// <summary>The pages at which this tool is picked.</summary>
    public IReadOnlyList<PickedTool> With(ToolId tool) => [.. Volatile.Read(ref pages).Where(page => page.Tool == tool)];

    private sealed class Standing(PickedTools all, PickedTool page) : IDisposable
    {
        public void Dispose() => ImmutableInterlocked.Update(ref all.pages, (pages, one) => pages.RemoveAll(other => ReferenceEquals(other, one)), page);
    }
}
