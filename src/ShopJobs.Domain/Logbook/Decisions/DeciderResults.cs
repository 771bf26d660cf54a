using System.Globalization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

// Results and settings: what was measured is recorded, and stands where its joints, its figures and its instrument allow it.
public static partial class Decider
{
    private static Verdict Record(CarState state, RecordResult result, Circumstances now, HoldRules rules)
    {
        var register = result.Job is { } id && state.Jobs.TryGetValue(id, out var job) ? now.Placed(job).Register : now.Register;
        var kind = register.ResultOf(result.Name);
        var refused = Permissions(rules, new PermissionQuestion(state, now, result, Right.Record));
        refused.AddRange(Incomplete(kind, result));
        refused.AddRange(LooseJoints(state, result.Name, now));
        if (kind.AfterDrive && state.Undone.TryGetValue(result.Name, out var since) && !state.DrivenSince(since))
        {
            refused.Add(new HoldPoint(HoldReason.NotDrivenYet) { Name = result.Name });
        }

        if (refused.Count > 0)
        {
            return new Verdict.Refused(refused);
        }

        var (undid, opens) = Opening.ByResult(state, now, result.Name);
        var problems = Problems(kind, result, now).ToList();
        var recorded = new ResultRecorded(
            result.Name, result.Values, result.Basis, result.Instrument, result.Conditions, result.Job, result.Step, undid)
        {
            Notes = result.Notes,
            Tool = result.Tool,
            On = result.Tool is null ? null : now.Today,
            ToolEntry = result.Tool is { } tool ? now.Tool(tool).Number : null,
            Problems = problems.Count > 0 ? problems : null,
        };
        return opens.Count == 0 ? Accept(recorded) : Accept(recorded, new Opened(opens, [], [], null, null) { BySetting = true });
    }

    private static IEnumerable<HoldPoint> Incomplete(ResultKind kind, RecordResult result)
    {
        if (string.IsNullOrWhiteSpace(result.Name) || (result.Values.Count == 0 && kind is { Measures.Count: 0, Notes.Count: 0 }))
        {
            yield return new HoldPoint(HoldReason.ResultIncomplete);
        }

        if (kind.OfPlace && ResultKind.Split(result.Name).Place is null)
        {
            yield return new HoldPoint(HoldReason.NoPlaceNamed);
        }

        foreach (var measure in kind.Measures.Where(measure => !result.Values.Any(value => value.Name == measure.Id && value.Unit == measure.Unit)))
        {
            yield return new HoldPoint(HoldReason.MeasureMissing) { Measure = measure };
        }

        foreach (var note in kind.Notes.Where(note => !Answers(note, result.Notes)))
        {
            yield return new HoldPoint(HoldReason.NoteMissing) { Name = note.Text, Choices = note.OneOf };
        }

        if (kind.NeedsInstrument && result.Tool is null)
        {
            yield return new HoldPoint(HoldReason.InstrumentMissing) { Name = result.Name };
        }
    }

    private static bool Answers(ResultNote note, IReadOnlyList<WrittenNote>? notes) =>
        notes?.FirstOrDefault(written => written.Name == note.Id) is { Text: { Length: > 0 } text }
        && (note.OneOf.Count == 0 || note.OneOf.Contains(text))
        && (!note.IsDay || DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _));

    // A result that depends on a joint says nothing while that joint is open or held.
    private static IEnumerable<HoldPoint> LooseJoints(CarState state, string name, Circumstances now) =>
        from book in state.Positions.Values
        where book.Fitting is Fitting.Open or Fitting.NewHardware || !book.Holds.IsEmpty
        where now.KindOf(state, book.Position.Key) is { Temporary: false } kind && Opening.Undoes(now.Register, kind, book.Position.Place, name)
        from found in PositionRules.All.SelectMany(rule => rule.Find(new PositionQuestion(state, now, book, null, null, null))).Take(1)
        select new HoldPoint(HoldReason.ResultJointLoose) { Position = book.Position, Name = name, Because = found };

    // What was measured is recorded all the same; it is no good result.
    private static IEnumerable<HoldReason> Problems(ResultKind kind, RecordResult result, Circumstances now)
    {
        if (result.Values.Any(value => kind.Measures.Any(measure => measure.Id == value.Name && !measure.Takes(value.Value))))
        {
            yield return HoldReason.MeasureOutside;
        }

        if (result.Tool is not { } id)
        {
            yield break;
        }

        var tool = now.Tool(id);
        if (tool.Instrument is null)
        {
            yield return HoldReason.ToolUnknown;
        }
        else if (tool.OutOfUseBy > 0)
        {
            yield return HoldReason.ToolQuarantined;
        }
        else if (!tool.IsCalibratedOn(now.Today))
        {
            yield return HoldReason.ToolOverdue;
        }
        else if (!now.IsInDate(tool))
        {
            yield return HoldReason.CalibrationUnknown;
        }
    }
}
