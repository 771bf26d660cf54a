namespace ShopJobs.Domain.Logbook;

/// <summary>What a place of the shop is. A member that was ever stored is never renamed.</summary>
public enum PlaceKind
{
    /// <summary>A lift: it holds one car.</summary>
    Lift,

    /// <summary>A stretch of floor under the roof, with room for several cars.</summary>
    Floor,

    /// <summary>Beyond the shop's door, with room for several cars.</summary>
    Outside,
}

/// <summary>A place of the shop where a car is put.</summary>
/// <param name="Key">What entries hold: it stays when the place gets another name.</param>
/// <param name="Name">What the shop calls it now.</param>
/// <param name="InUse">False once it was retired: no car is put there, and old entries still find its name.</param>
public sealed record ShopPlace(string Key, string Name, PlaceKind Kind, bool InUse = true);
