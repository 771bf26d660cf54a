using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Workshop;

/// <summary>The tools of the test shop with their logbooks, shared by its cars.</summary>
internal sealed class ToolShelf
{
    private readonly Dictionary<ToolId, List<Recorded>> logbooks;
    private readonly Dictionary<ToolId, ToolState> states = [];

    public ToolShelf(DateTime start)
    {
        logbooks = TestTools.Logbooks(start.AddDays(-100), DateOnly.FromDateTime(start));
        foreach (var (id, book) in logbooks)
        {
            states[id] = book.Aggregate(ToolState.Empty, (state, next) => state.Apply(next));
        }
    }

    private ToolShelf(ToolShelf other)
    {
        logbooks = other.logbooks.ToDictionary(book => book.Key, book => book.Value.ToList());
        states = new(other.states);
    }

    /// <summary>The same tools, of which something else may be told from here.</summary>
    public ToolShelf Copy() => new(this);

    public IReadOnlyDictionary<ToolId, List<Recorded>> Logbooks => logbooks;

    public ToolState StateOf(ToolId id) => states.GetValueOrDefault(id, ToolState.Empty);

    public void Tell(ToolId id, Entry entry, DateTime at)
    {
        if (!logbooks.TryGetValue(id, out var book))
        {
            logbooks[id] = book = [];
        }

        var recorded = new Recorded(book.Count + 1, at, TestPerson.Lee.Id, entry);
        book.Add(recorded);
        states[id] = StateOf(id).Apply(recorded);
    }
}
