using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>One entry about a joint, as its history shows it.</summary>
/// <param name="Numbers">Fasteners of the joint it is about.</param>
/// <param name="Void">Fasteners for which it is void, with the entry that voided it.</param>
public sealed record JointLine(Recorded Recorded, IReadOnlyList<int> Numbers, IReadOnlyDictionary<int, Recorded> Void)
{
    /// <summary>True when it is void for every fastener it names.</summary>
    public bool IsVoid => Numbers.Count > 0 && Void.Count == Numbers.Count;
}

/// <summary>Everything that was ever recorded of a joint, over all its openings. Nothing is left out.</summary>
public static class JointHistory
{
    /// <summary>The joint's lines in the order of the logbook.</summary>
    /// <param name="entries">The car's whole logbook, oldest first.</param>
    public static IReadOnlyList<JointLine> Of(IEnumerable<Recorded> entries, Joint joint)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var lines = new List<Line>();
        foreach (var recorded in entries)
        {
            var numbers = NumbersOf(recorded.Entry.Facets(), joint, lines);
            if (numbers.Count == 0)
            {
                continue;
            }

            var neverDone = OpeningTakenBack(recorded.Entry, lines);
            foreach (var line in lines)
            {
                line.VoidAsOf(recorded, numbers);
                line.TakenBackBy(recorded, neverDone);
            }

            lines.Add(new Line(recorded, numbers));
        }

        return [.. lines.Select(line => new JointLine(line.Recorded, line.Numbers, line.Void))];
    }

    // The opening that a second person confirms was never done; 0 for any other entry.
    private static long OpeningTakenBack(Entry entry, List<Line> lines) =>
        entry is CorrectionConfirmed confirmed
        && lines.Find(line => line.Recorded.Number == confirmed.Correction)?.Recorded.Entry is Corrected { Restated: null } correction
        && lines.Exists(line => line.Recorded.Number == correction.Target && line.Recorded.Entry is Opened)
            ? correction.Target
            : 0;

    private static List<int> NumbersOf(EntryFacets entry, Joint joint, List<Line> lines) => entry.Positions.Count > 0
        ? At(joint, entry.Positions)
        : Of(lines, entry.About);

    private static List<int> At(Joint joint, IEnumerable<JointPosition> positions) =>
        [.. positions.Where(position => position.Joint == joint).Select(position => position.Number).Distinct().Order()];

    private static List<int> Of(List<Line> lines, IReadOnlyList<long> entries) =>
        [.. lines.Where(line => entries.Contains(line.Recorded.Number)).SelectMany(line => line.Numbers).Distinct().Order()];

    private sealed record Line(Recorded Recorded, List<int> Numbers)
    {
        public Dictionary<int, Recorded> Void { get; } = [];

        public void VoidAsOf(Recorded later, List<int> numbers)
        {
            var voids = later.Entry switch
            {
                Opened => Recorded.Entry.Facets().FallsWhenOpened,
                Corrected { Restated: null } correction => correction.Target == Recorded.Number && Recorded.Entry is not Opened,
                _ => false,
            };
            foreach (var number in voids ? Numbers.Intersect(numbers) : [])
            {
                Void.TryAdd(number, later);
            }
        }

        // What an opening voided is valid again when it was never done.
        public void TakenBackBy(Recorded confirmed, long opening)
        {
            foreach (var number in Void.Where(voided => voided.Value.Number == opening).Select(voided => voided.Key).ToList())
            {
                Void.Remove(number);
            }

            foreach (var number in Recorded.Number == opening ? Numbers : [])
            {
                Void.TryAdd(number, confirmed);
            }
        }
    }
}
