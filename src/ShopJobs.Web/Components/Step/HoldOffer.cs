using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Step;

/// <summary>Something that HOLD can stop.</summary>
/// <param name="Words">What it is.</param>
/// <param name="Command">The report that stops it.</param>
public sealed record HoldOffer(string Words, Func<HoldGiven, Report> Command)
{
    /// <summary>A lot or kit is named with it.</summary>
    public bool AsksLot { get; init; }
}

/// <summary>Why it is stopped, by the digest of the reason, and the lot or kit where one is named.</summary>
public sealed record HoldGiven(ContentDigest Reason, string Lot);
