using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Layout;

/// <summary>One entry of the top bar.</summary>
/// <param name="Href">Local address of a page that exists.</param>
/// <param name="Text">What it is called.</param>
/// <param name="Needs">Right without which the entry is not shown; the page asks again.</param>
/// <param name="Rare">True when it folds under More where the bar has no room for it.</param>
public sealed record NavEntry(string Href, string Text, Right? Needs = null, bool Rare = false);
