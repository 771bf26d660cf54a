using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.Layout;

/// <summary>The top bar's entries in their order. Whoever builds a page adds its line.</summary>
public static class ShopNav
{
    /// <summary>Those that this person may open; somebody not signed in sees those that ask for no right.</summary>
    public static IEnumerable<NavEntry> Of(Present? present) => All.Where(entry => entry.Needs is not { } right || present?.May(right) == true);

    public static IReadOnlyList<NavEntry> All { get; } =
    [
        new("/", "Floor"),
        new("/my-work", "My work"),
        new("/open-joints", "Not finished"),
        new("/procedures", "Procedures"),
        new("/tools", "Torque tools"),
        new("/bench", "Bench", Rare: true),
        new("/parts", "Parts", Rare: true),
        new("/cars", "Cars", Right.Lead, Rare: true),
        new("/people", "People and places", Right.Lead, Rare: true),
    ];
}
