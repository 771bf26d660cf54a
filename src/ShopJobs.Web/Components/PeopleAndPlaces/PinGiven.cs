namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>What came of a command that makes a PIN.</summary>
public abstract record PinGiven
{
    private PinGiven()
    {
    }

    /// <summary>The PIN, to be shown once and kept nowhere.</summary>
    public sealed record Given(string Name, string Pin) : PinGiven;

    /// <summary>Why not, and what to do.</summary>
    public sealed record Refused(string Words) : PinGiven;
}
