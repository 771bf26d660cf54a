namespace ShopJobs.Domain.Logbook;

/// <summary>The clock went back or jumped: it showed something else than the time that had passed since it was last looked at.</summary>
/// <param name="Was">What it should have shown, UTC.</param>
/// <param name="Showed">What it showed instead, UTC.</param>
public sealed record ClockStepped(DateTime Was, DateTime Showed) : Entry
{
    public override EntryFacets Facets() => EntryFacets.None;
}

/// <summary>The lead compared the clock with one he trusts: it is right from here on. This entry alone may be earlier than the one before it.</summary>
/// <param name="Steps">Numbers of the steps of the clock that this answers.</param>
public sealed record ClockSet(IReadOnlyList<long> Steps, string Shown) : Entry
{
    public override EntryFacets Facets() => new() { About = Steps };
}
