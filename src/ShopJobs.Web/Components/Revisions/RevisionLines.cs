using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Revisions;

/// <summary>What a newer revision means for what was done, in words.</summary>
internal static class RevisionLines
{
    /// <summary>In one line: "20 records the same, 5 now outside, 2 signed steps to sign again".</summary>
    public static string Short(RevisionEffect effect)
    {
        var parts = new List<string>();
        Add(effect.Pulls.Count(pull => pull.Match == RevisionMatch.Passes), "record the same", "records the same");
        Add(effect.Pulls.Count(pull => pull.Match == RevisionMatch.Outside), "now outside what it asks", "now outside what it asks");
        Add(effect.Pulls.Count(pull => pull.Match == RevisionMatch.Gone), "of a step that is gone", "of steps that are gone");
        Add(effect.Steps.Count, "signed step to sign again", "signed steps to sign again");
        return parts.Count == 0 ? "nothing was done under it yet" : string.Join(", ", parts);

        void Add(int count, string one, string more)
        {
            if (count > 0)
            {
                parts.Add(string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : more)}"));
            }
        }
    }

    /// <summary>All of it, for whoever signs that the job goes on by the newer revision.</summary>
    public static IReadOnlyList<string> Of(CarReading reading, RevisionEffect effect, EntryNames names)
    {
        var same = effect.Pulls.Count(pull => pull.Match == RevisionMatch.Passes);
        return
        [
            string.Create(CultureInfo.InvariantCulture, $"{same} {(same == 1 ? "record stays valid" : "records stay valid")}: the newer revision asks the same, or they are inside it."),
            .. effect.Pulls.Where(pull => pull.Match != RevisionMatch.Passes).GroupBy(pull => (pull.Pull.Fact.Position.Joint, pull.Pull.Fact.Stage, Has: pull.Pull.AtFastener?.ToString() ?? pull.Pull.Amount(), pull.Asked))
                .Select(same => string.Create(
                    CultureInfo.InvariantCulture,
                    $"Held until it is decided or redone: {names.Positions(same.Select(pull => pull.Pull.Fact.Position))}, stage {same.Key.Stage}: {same.Key.Has}; now {same.Key.Asked ?? "no such work"}.")),
            .. effect.Steps.Select(step => $"Signed again: {step.Title()}."),
        ];
    }
}
