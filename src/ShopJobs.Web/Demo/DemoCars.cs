namespace ShopJobs.Web.Demo;

/// <summary>The invented cars of the demo shop and who owns them.</summary>
public static class DemoCars
{
    /// <param name="Place">Key of one of the four places that every shop starts with.</param>
    public sealed record DemoCar(string Name, string Model, string Mark, string Colour, string Place, string Note, string Owner, string Contact)
    {
        /// <summary>Invented; a maker's code that is not given to anybody, as far as we know.</summary>
        public string Chassis { get; init; } = "";
    }

    public static readonly DemoCar Blue = new(
        "Blue", "Brennock 220", "DEMO 220", "blue", "LiftA", "Hill climb. Front strut, rear drive, 1310 kg.", "Rasmo Field", "01632 960110")
    { Chassis = "ZZ9DEM220BX000001" };

    public static readonly DemoCar Orange = new(
        "Orange", "Lorrick 14", "DEMO 14", "orange", "LiftB", "Track days.", "Ilka Thorne", "01632 960124");

    public static readonly DemoCar White = new(
        "White", "Dunmarl 3", "DEMO 3", "white", "Floor", "Time trial.", "Benno Hask", "01632 960137");

    public static readonly DemoCar Grey = new(
        "Grey", "Wexmoor 40", "DEMO 40", "grey", "Outside", "Street and track.", "Ilka Thorne", "01632 960124");

    public static IReadOnlyList<DemoCar> All { get; } = [Blue, Orange, White, Grey];
}
