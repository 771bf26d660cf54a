using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>How a logbook becomes a state, entry by entry.</summary>
/// <param name="Name">Tells folds of one logbook apart in the cache.</param>
/// <param name="Empty">The state before the first entry.</param>
/// <param name="Apply">
/// Pure; gives a new state and leaves the old one as it is. It is the first to read the payload: it throws
/// <see cref="UnknownEntryException"/> for a kind or version it doesn't know and <see cref="FormatException"/> for a payload
/// it can't read.
/// </param>
public sealed record Folder<TState>(string Name, TState Empty, Func<TState, Envelope, TState> Apply);
