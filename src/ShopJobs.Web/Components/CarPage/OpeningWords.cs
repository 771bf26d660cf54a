using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Releases;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>What opening does, in words.</summary>
public static class OpeningWords
{
    /// <summary>What falls when these are opened, one line each; empty where nothing does.</summary>
    public static IReadOnlyList<string> Falls(CarState state, Circumstances now, IReadOnlyList<JointPosition> positions) =>
        Falls(state, now, OpeningConsequences.Of(state, now, positions));

    /// <summary>As the other, of consequences that were found.</summary>
    public static IReadOnlyList<string> Falls(CarState state, Circumstances now, OpeningConsequences consequences)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(consequences);
        var results = consequences.Opened.Undid.Any(undone => state.Results.TryGetValue(undone.ToString(), out var result) && result.VoidBy == 0);
        return results || consequences is not { RecordsVoid: 0, Releases: [], Steps: [] } ? [.. Lines(consequences, now).Skip(1)] : [];
    }

    /// <summary>One line for each consequence; the first says what is opened.</summary>
    public static IReadOnlyList<string> Lines(OpeningConsequences consequences, Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(consequences);
        var lines = new List<string> { $"opens {Joints(now, consequences.Opened.Positions)}" };
        if (consequences.Opened.AlsoOpened.Count > 0)
        {
            lines.Add($"also opens {Joints(now, consequences.Opened.AlsoOpened)}");
        }

        if (consequences.RecordsVoid > 0)
        {
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"{consequences.RecordsVoid} torque {(consequences.RecordsVoid == 1 ? "record is" : "records are")} void from now"));
        }

        if (consequences.Opened.Undid.Count > 0)
        {
            lines.Add($"also redo: {string.Join(", ", consequences.Opened.Undid.Select(undone => undone.Name))}");
        }

        lines.AddRange(consequences.Releases.Select(kind => $"the release {kind.Words()} is void from now"));
        if (consequences.Steps.Count > 0)
        {
            lines.Add($"to be signed again: {string.Join("; ", consequences.Steps.Select(step => $"“{step.Title()}”"))}");
        }

        if (consequences.SummaryOutdated is { } version)
        {
            lines.Add(string.Create(CultureInfo.InvariantCulture, $"work summary version {version} is marked out of date"));
        }

        return lines;
    }

    private static string Joints(Circumstances now, IReadOnlyList<JointPosition> positions) => string.Join("; ", positions
        .GroupBy(position => position.Joint, position => (long)position.Number)
        .Select(joint => $"{now.Name(joint.Key)} {EntryNames.Numbers(joint)}"));
}
