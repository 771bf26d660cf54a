namespace ShopJobs.Web.Data.Logbook;

/// <summary>A logbook's state.</summary>
/// <param name="State">After <paramref name="Head"/>.</param>
/// <param name="Head">The last entry that is in the state.</param>
/// <param name="Unreadable">Why the logbook may only be read, when an entry after <paramref name="Head"/> can't be used.</param>
public sealed record Folded<TState>(TState State, Head Head, LogbookReadOnlyException? Unreadable);
