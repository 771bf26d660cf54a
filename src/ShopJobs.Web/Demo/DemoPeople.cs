using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Demo;

/// <summary>The invented people of the demo shop. Their PINs are public; such a shop is never served to a network.</summary>
public static class DemoPeople
{
    public sealed record DemoPerson(string Name, string Initials, string Pin, string Does, Right[] Rights);

    public static readonly DemoPerson Lead = new("Edda", "ED", "470913", "lead", [.. RightSets.OfTheLead]);

    public static readonly DemoPerson Chassis = new("Jorn", "JO", "582046", "technician, may witness", [Right.Record, Right.Witness]);

    public static readonly DemoPerson Engines = new("Mika", "MI", "629751", "technician, may witness and author", [Right.Record, Right.Witness, Right.Author]);

    public static readonly DemoPerson Newcomer = new("Sefa", "SE", "318605", "technician, records only", [Right.Record]);

    public static IReadOnlyList<DemoPerson> All { get; } = [Lead, Chassis, Engines, Newcomer];
}
