using System.Globalization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>How the difference between two registers is said.</summary>
internal static class RegisterWords
{
    /// <summary>What is different in two registers: in the list of every car, and in those of the kinds of car.</summary>
    internal static IEnumerable<string> Of(JointRegister before, JointRegister after)
    {
        var ofAll = RegisterChanges.Between(before, after).SelectMany(Of).ToList();
        return ofAll.Concat(before.Cars.Keys.Union(after.Cars.Keys).Order(StringComparer.Ordinal).SelectMany(key => OfKind(key, before, after)));
    }

    private static IEnumerable<string> OfKind(string key, JointRegister before, JointRegister after)
    {
        var list = new JointList(key, []);
        return !before.Cars.TryGetValue(key, out var removed) ? [$"Added: the kind of car “{after.Cars[key].Name}”."]
            : !after.Cars.ContainsKey(key) ? [$"Removed: the kind of car “{removed.Name}”. A car that follows it follows nothing any more: it is moved by hand and not driven."]
            : RegisterChanges.Between(before.For(list), after.For(list)).SelectMany(Of)
                .Except(RegisterChanges.Between(before, after).SelectMany(Of)).Select(line => $"On {removed.Name}: {line}");
    }

    /// <summary>What is different in one kind of joint, a line for each difference.</summary>
    internal static IEnumerable<string> Of(KindChange change)
    {
        var kind = change.Kind;
        if (change.Before is null)
        {
            yield return $"Added: {kind.Name} ({kind.Key}), {Positions(change.Added)}. As found on every car at once{Asked(kind)}.";
            yield break;
        }

        if (change.After is null)
        {
            yield return $"Removed: {kind.Name} ({kind.Key}), {Positions(change.Lost)}.";
            yield break;
        }

        if (change.Lost.Count > 0)
        {
            yield return $"Fewer: {kind.Name} ({kind.Key}) loses {Positions(change.Lost)}.";
        }

        if (change.Added.Count > 0)
        {
            yield return $"More: {kind.Name} ({kind.Key}) gets {Positions(change.Added)}. As found on every car at once{Asked(kind)}.";
        }

        if (change.IsDescribedAnew)
        {
            yield return $"Changed: {kind.Name} ({kind.Key}): its name, what it rides on, what it undoes or what a release asks of it.";
        }
    }

    // "4 positions: front-left 5, front-right 5"; every one of a place is said once.
    internal static string Positions(IReadOnlyList<JointPosition> positions) => string.Create(
        CultureInfo.InvariantCulture,
        $"{positions.Count} {(positions.Count == 1 ? "position" : "positions")}: {string.Join(", ", positions.GroupBy(position => position.Place).Select(Numbers))}");

    private static string Numbers(IGrouping<string, JointPosition> place) =>
        $"{place.Key} {string.Join(" ", place.Select(position => position.Number.ToString(CultureInfo.InvariantCulture)))}";

    private static string Asked(JointKind kind) =>
        string.Join(" and ", ReleaseKinds.All.Where(release => release != ReleaseKind.RoadTest && kind.LeastFor(release) == LeastState.MadeHere)
            .Select(release => release switch { ReleaseKind.Move => "moving", ReleaseKind.Road => "the road", _ => "the track" })) is { Length: > 0 } asks
            ? $", and made here before {asks}"
            : "";
}
