namespace ShopJobs.Web.Components.Above;

/// <summary>Where on the car a place of the joint register lies, as far as its word says so.</summary>
public enum CarArea
{
    FrontLeft,
    FrontRight,
    RearLeft,
    RearRight,
    Front,
    Engine,
    Driveline,
    Driver,
    Rear,
}

/// <summary>Reads the words of places.</summary>
public static class CarAreas
{
    private static readonly Dictionary<string, CarArea> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["front-left"] = CarArea.FrontLeft,
        ["front-right"] = CarArea.FrontRight,
        ["rear-left"] = CarArea.RearLeft,
        ["rear-right"] = CarArea.RearRight,
        ["front"] = CarArea.Front,
        ["engine"] = CarArea.Engine,
        ["driveline"] = CarArea.Driveline,
        ["driver"] = CarArea.Driver,
        ["rear"] = CarArea.Rear,
    };

    /// <summary>The area that a place's word names; null for any other word, whose joints are listed and not drawn.</summary>
    public static CarArea? Of(string place) => Words.TryGetValue(place, out var area) ? area : null;

    /// <summary>True at the four wheels.</summary>
    public static bool IsCorner(this CarArea area) => area <= CarArea.RearRight;

    /// <summary>The area's word.</summary>
    public static string Word(this CarArea area) => Words.First(word => word.Value == area).Key;
}
