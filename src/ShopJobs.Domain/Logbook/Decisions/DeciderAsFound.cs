using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// How a system was found. A fact: recorded, late too; refused only where it says nothing, or nobody knows of what.
public static partial class Decider
{
    private static Verdict AsFound(CarState state, RecordAsFound found, Circumstances now)
    {
        if (!now.Register.Systems.Contains(found.System))
        {
            return Refuse(new HoldPoint(HoldReason.UnknownSystem) { Name = found.System });
        }

        var sheet = now.Register.AsFoundOf(found.System);
        List<HoldPoint> refused = [.. NotHere(state), .. NotOnSheet(sheet, found)];
        var says = found.Values.Count > 0 || found.Notes is { Count: > 0 } || found.Words is not null;
        if (says == found.Told is not null)
        {
            refused.Add(new HoldPoint(says ? HoldReason.SeenAndUnknown : HoldReason.AsFoundEmpty) { Name = found.System });
        }

        return refused.Count > 0
            ? new Verdict.Refused(refused)
            : Accept(new AsFoundRecorded(found.System, found.Values)
            {
                Notes = found.Notes is { Count: > 0 } ? found.Notes : null,
                Words = found.Words,
                Told = found.Told,
                After = state.Unseen.TryGetValue(found.System, out var opening) ? opening : null,
            });
    }

    // What was found may be outside every limit; it is only refused where the sheet asks no such thing.
    private static IEnumerable<HoldPoint> NotOnSheet(ResultKind sheet, RecordAsFound found) =>
    [
        .. from value in found.Values
           where !sheet.Measures.Any(measure => measure.Id == value.Name && measure.Unit == value.Unit)
           select new HoldPoint(HoldReason.NotOnSheet) { Name = value.Name },
        .. from written in found.Notes ?? []
           where !sheet.Notes.Any(note => note.Id == written.Name) || !Answers(sheet.Notes.First(note => note.Id == written.Name), found.Notes)
           select new HoldPoint(HoldReason.NotOnSheet) { Name = written.Name },
    ];
}
