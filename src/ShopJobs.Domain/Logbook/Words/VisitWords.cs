namespace ShopJobs.Domain.Logbook;

/// <summary>Coming in, moving and leaving in plain words.</summary>
internal static class VisitWords
{
    public static string Of(Entry entry, EntryNames names) => entry switch
    {
        Arrived fact => $"The car came in, {(fact.Odometer is { } read ? $"odometer {read.Words}" : "odometer not read")}; it is at {names.Place(fact.Place)}.{Fuel(fact)}{Case(fact, names)}",
        AsFoundRecorded { IsUnknown: true } fact => $"As found, {fact.System}{Late(fact)}: unknown, and the customer was told.",
        AsFoundRecorded fact => $"As found, {fact.System}{Late(fact)}: {Seen(fact)}.",
        CarMoved fact => $"{(fact.Why is null ? "Moved" : "Recorded that the car was moved")} from {names.Place(fact.From)} to {names.Place(fact.To)}{Though(fact.Against, "it was not to be moved", names)}.",
        Left fact => $"{(fact.Why is null ? "The car left" : "Recorded that the car left")}, {Way(fact)}{(fact.Odometer is { } read ? $", odometer {read.Words}" : "")}{Though(fact.Against, "it was not to leave", names)}.",
        LookedOver fact => $"Looked the car over after it was moved against its gate: entries {EntryNames.Numbers(fact.Moves)}.",
        ReTorqueExtended fact => FormattableString.Invariant($"Gave the re-torque of {names.Positions(fact.Positions)} a new interval from {WallTime.Day(fact.On)}, at {fact.Odometer.Words}."),
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry.GetType().Name, "Not an entry of a visit."),
    };

    private static string Fuel(Arrived fact) => fact.FuelEighths switch
    {
        null => "",
        0 => " Fuel: empty.",
        8 => " Fuel: full.",
        { } eighths => FormattableString.Invariant($" Fuel: {eighths} of 8."),
    };

    private static string Late(AsFoundRecorded fact) => fact.After is { } opening ? $", written down after entry {EntryWords.Number(opening)} had opened it" : "";

    private static string Seen(AsFoundRecorded fact)
    {
        string[] seen =
        [
            .. fact.Values.Select(value => FormattableString.Invariant($"{value.Name.Replace('-', ' ')} {value.Value} {value.Unit}")),
            .. (fact.Notes ?? []).Select(note => $"{note.Name.Replace('-', ' ')} {note.Text}"),
        ];
        return seen.Length > 0 ? string.Join(", ", seen) : "in words";
    }

    private static string Case(Arrived fact, EntryNames names) => fact.Warranty is not { } about
        ? ""
        : $" A warranty case about {string.Join("; ", about.Joints.Select(names.Joint))}: entries {EntryNames.Numbers(about.Records)}.";

    private static string Way(Left fact) => (fact.Way, fact.Release) switch
    {
        (WayOut.OnTrailer, _) => "on a trailer",
        (_, { } release) => $"driven under the road release of entry {EntryWords.Number(release)}",
        _ => "driven without a road release",
    };

    private static string Though(IReadOnlyList<SpokenAgainst> against, string gate, EntryNames names)
    {
        if (against.Count == 0)
        {
            return "";
        }

        var loose = against.Select(one => one.Position).OfType<Procedures.JointPosition>().Distinct().ToList();
        var others = against.Where(one => one.Position is null).Select(one => HoldWords.Of(one.Reason)).Distinct().ToList();
        return $", though {gate}: {string.Join("; ", loose.Count > 0 ? [names.Positions(loose), .. others] : others)}";
    }
}
