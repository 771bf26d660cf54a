using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Why a release or a record is no longer valid, in a few words.</summary>
public static class EndedBy
{
    /// <summary>"joint opened: wheel nut front-left".</summary>
    public static string Words(Recorded entry, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entry.Entry switch
        {
            Opened fact => $"joint opened: {string.Join(", ", fact.Positions.Select(position => now.Name(position.Joint)).Distinct())}",
            TorqueRecorded fact => $"a pull on {now.Name(fact.Position)} holds it",
            Settled => "a re-torque holds it",
            Witnessed => "not accepted by the witness",
            PositionHeld fact => $"work stopped on {now.Name(fact.Positions[0])}",
            Corrected => "an entry was corrected",
            ResultRecorded { Problems.Count: > 0 } fact => $"{now.Register.NameOfResult(fact.Name)} is not as it should be",
            ResultRecorded fact => $"{now.Register.NameOfResult(fact.Name)} changed",
            RoadTestEnded => "the car came back",
            HandTightened => "run down without being opened first",
            Decided fact => $"decided on {now.Name(fact.Position)}",
            _ => "something it rested on changed",
        };
    }
}
