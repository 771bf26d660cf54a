using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Summaries;

/// <summary>What was found and how it was decided: nothing of who, and nothing of the notes.</summary>
internal static class Findings
{
    public static IReadOnlyList<Finding> Of(SummarySubject car, IReadOnlyList<Recorded> entries)
    {
        var byNumber = entries.ToDictionary(entry => entry.Number);
        return [.. entries.SelectMany(entry => entry.Entry switch
            {
                Decided fact when IsTold(car, entry.Number, fact, byNumber)
                    => [Decision(car, entry.Number, fact, byNumber)],
                WorkDecided fact => HeldWorkFindings.Of(car, entry.Number, fact),
                Settled { Moved: true, Problems.Count: 0 } fact => Moved(car, entry.Number, fact),
                _ => Array.Empty<Finding>(),
            }),
            .. Undecided(car, byNumber)];
    }

    /// <summary>Those of the findings that are the shop's own doing.</summary>
    public static IEnumerable<OwnFinding> OfOurs(SummarySubject car, IReadOnlyList<Recorded> entries)
    {
        var byNumber = entries.ToDictionary(entry => entry.Number);
        var decided =
            from entry in entries
            let fact = entry.Entry as Decided
            where fact is not null && IsTold(car, entry.Number, fact, byNumber)
            select Own(car, entry.Number, fact, byNumber);
        var held =
            from book in car.State.Positions.Values.OrderBy(book => book.Position.ToString(), StringComparer.Ordinal)
            let hold = book.Holds.Find(hold => hold.Decision is null && IsOurs(byNumber[hold.Number].Entry))
            where hold is not null
            select new OwnFinding(book.Position, hold.Number, byNumber[hold.Number].Entry, null, Stands: true, Accepted: false, Corrected: false);
        return decided.OfType<OwnFinding>().Concat(held);
    }

    private static bool IsTold(SummarySubject car, long number, Decided fact, Dictionary<long, Recorded> entries) =>
        Concerns(car, number, fact) || ClassAFindings.Stays(car, number, fact, entries);

    // What is held because of damage, and a joint that moved in driving, is found and not done.
    private static bool IsOurs(Entry entry) => entry is TorqueRecorded { Problems.Count: > 0 } or Witnessed { Accepted: false } or Decided { Doubts.Count: > 0 };

    private static OwnFinding? Own(SummarySubject car, long number, Decided fact, Dictionary<long, Recorded> entries)
    {
        var why = fact.About.Select(about => entries[about].Entry).FirstOrDefault(IsOurs) ?? (fact.Doubts.Count > 0 ? fact : null);
        return why is null ? null : new OwnFinding(
            fact.Position, number, why, fact.Disposition, StillStands(car, number, fact), fact.Acceptance is not null,
            entries.Values.Any(entry => entry.Entry is Corrected correction && fact.About.Contains(correction.Target)));
    }

    private static bool Concerns(SummarySubject car, long number, Decided fact) =>
        number >= car.Since || (fact.Disposition == Disposition.UseAsIs && StillStands(car, number, fact));

    /// <summary>The position was not opened since the decision.</summary>
    internal static bool StillStands(SummarySubject car, long number, Decided fact) => car.State.Of(fact.Position).OpenedBy < number;

    private static Finding Decision(SummarySubject car, long number, Decided fact, Dictionary<long, Recorded> entries)
    {
        var book = car.State.Of(fact.Position);
        var why = fact.About.Select(about => Reason(entries[about].Entry))
            .Concat(fact.Doubts.Count > 0 ? ["the tool it was tightened with was found doubtful"] : Array.Empty<string>()).Distinct();
        var stands = StillStands(car, number, fact);
        var decision = fact.Disposition switch
        {
            Disposition.UseAsIs when !stands => "used as it was; the joint was opened again since",
            Disposition.UseAsIs when fact.Acceptance is not null => "used as it is, with a written acceptance by the maker or a named engineer",
            Disposition.UseAsIs => "used as it is",
            Disposition.Replace => Carried("to be replaced", "replaced by a new part", book),
            _ => Carried("to be redone", "redone", book),
        };
        return new Finding(
            $"{car.Name(fact.Position)}: {string.Join(", ", why)}", decision, fact.Disposition == Disposition.UseAsIs && stands)
        {
            Ours = Own(car, number, fact, entries) is not null,
        };

        string Carried(string before, string after, PositionBook now) =>
            now.OpenedBy > number && car.IsTight(now) ? $"{after}, now at torque" : $"{before}; not finished";
    }

    private static IEnumerable<Finding> Moved(SummarySubject car, long number, Settled fact) =>
        from position in fact.Positions
        where number >= car.Since || ClassAFindings.Stays(car, number, position)
        select new Finding(
            fact.AngleDegrees is { } angle
                ? string.Create(CultureInfo.InvariantCulture, $"{car.Name(position)}: moved by {angle:0.#} degrees at the re-torque after the drive")
                : $"{car.Name(position)}: moved at the re-torque after the drive",
            "tightened again as the procedure asks",
            UsedAsIs: false);

    private static IEnumerable<Finding> Undecided(SummarySubject car, Dictionary<long, Recorded> entries) =>
        from book in car.State.Positions.Values.OrderBy(book => book.Position.ToString(), StringComparer.Ordinal)
        let holds = book.Holds.Where(hold => hold.Decision is null).ToList()
        where holds.Count > 0
        select new Finding(
            $"{car.Name(book.Position)}: {string.Join(", ", holds.Select(hold => Reason(entries[hold.Number].Entry)).Distinct())}",
            "not decided yet: it is held",
            UsedAsIs: false)
        {
            Ours = holds.Exists(hold => IsOurs(entries[hold.Number].Entry)),
        };

    private static string Reason(Entry entry) => entry switch
    {
        TorqueRecorded { Problems: [var first, ..] } => Reason(first),
        Settled { AngleDegrees: { } angle } fact when fact.Problems.Contains(HoldReason.MovedTooFar) => string.Create(
            CultureInfo.InvariantCulture, $"it had moved {angle:0.#} degrees by the re-torque after the drive, more than a joint settles"),
        Settled => "not as the procedure asks at the re-torque after the drive",
        Witnessed => "the second person did not accept it",
        Decided { Doubts.Count: > 0 } => "the tool it was tightened with was found doubtful",
        _ => "stopped because of damage or doubt",
    };

    private static string Reason(HoldReason reason) => reason switch
    {
        HoldReason.OverRange => "tightened over the permitted maximum",
        HoldReason.TurnOutside => "turned by another angle than permitted",
        HoldReason.UnderRange => "tightened below the permitted range",
        HoldReason.SecondPull => "pulled once more when it was already at torque",
        HoldReason.SettingNotInstructed => "tightened at another setting than instructed",
        HoldReason.ToolUnknown or HoldReason.ToolOverdue or HoldReason.ToolAtItsLimit or HoldReason.ToolQuarantined or HoldReason.ToolOutOfRange
            or HoldReason.EvidenceNotAllowed => "tightened with a tool that does not count for it",
        HoldReason.HardwareNotNew => "new hardware was asked and not recorded",
        _ => "not tightened in the order or condition the procedure asks",
    };
}
