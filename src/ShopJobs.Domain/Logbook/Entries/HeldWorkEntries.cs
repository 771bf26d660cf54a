namespace ShopJobs.Domain.Logbook;

/// <summary>
/// Somebody stopped what is no fastener: one step, one result, or one lot or kit of parts. It says one of the three. What a lot was
/// fitted to on this car is held with it.
/// </summary>
public sealed record WorkHeld(ContentDigest Reason) : Entry
{
    /// <summary>The job of the step, or at which the lot was in hand.</summary>
    public JobId? Job { get; init; }

    /// <summary>The step instance that is held.</summary>
    public string? Step { get; init; }

    /// <summary>Number of the entry of the result that is held.</summary>
    public long? Result { get; init; }

    /// <summary>The lot or kit that is held, as printed on the bag or box.</summary>
    public string? Lot { get; init; }

    /// <summary>The group for which the lot was in hand; null where none is known.</summary>
    public string? Group { get; init; }

    public override EntryFacets Facets() => new()
    {
        Job = Job,
        About = Result is { } result ? [result] : [],
        Texts = KeptText.Given(("Reason", Reason)),
    };
}

/// <summary>What was held and is no fastener was decided by a person with the right, not the doer.</summary>
/// <param name="Hold">Number of the entry that holds it.</param>
/// <param name="Acceptance">Written acceptance by the maker or a named engineer; asked for a lot of a class A joint used as is.</param>
public sealed record WorkDecided(
    long Hold, Disposition Disposition, ContentDigest Reason, ContentDigest? Acceptance, string Shown) : Entry
{
    public override EntryFacets Facets() => new()
    {
        About = [Hold],
        Texts = KeptText.Given(("Reason", Reason), ("Written acceptance", Acceptance)),
    };
}
