using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// What a result has to say, and which of them only a drive gives.
internal sealed partial class Ledger
{
    private ResultKind? KindOf(string name) => register.ResultKinds.GetValueOrDefault(name);

    private bool IsAfterDrive(string name) => KindOf(name)?.AfterDrive == true;

    private IEnumerable<Reason> OfResult(IReadOnlySet<Right> rights, RecordResult result)
    {
        var kind = KindOf(result.Name);
        return Those(
            (HoldReason.ResultIncomplete, result.Name.Length == 0 || result.Values.Count == 0),
            (HoldReason.NoteMissing, kind?.Notes.Any(note => result.Notes?.Any(given => given.Name == note.Id && note.OneOf.Contains(given.Text)) != true) == true),
            (HoldReason.InstrumentMissing, kind?.NeedsInstrument == true && result.Tool is null),
            (HoldReason.NoRight, !rights.Contains(Right.Record)),
            (HoldReason.ResultJointLoose, JointsOf(result.Name).Any(position => WhatIsOn(position) is On.Nothing or On.New || HoldsOn(position).Count > 0)),
            (HoldReason.NotDrivenYet, IsAfterDrive(result.Name) && UndoneNames.Contains(result.Name) && !DrivenSince(UndoneBy(result.Name)))).Select(why => new Reason(why));
    }

    private long UndoneBy(string name) => lines.Last(line => line.Undoes.Contains(name)).Number;

    private IReadOnlyList<HoldReason> ProblemsOfResult(RecordResult result, Line line)
    {
        var outside = KindOf(result.Name)?.Measures.Any(measure => result.Values.Any(value => value.Name == measure.Id && value.Value < measure.Minimum)) == true;
        if (result.Tool is not { } id)
        {
            return Those((HoldReason.MeasureOutside, outside));
        }

        var tool = Tool(id);
        return Those(
            (HoldReason.MeasureOutside, outside),
            (HoldReason.ToolUnknown, !tool.IsInstrument),
            (HoldReason.ToolQuarantined, tool.IsInstrument && tool.OutOfUse),
            (HoldReason.ToolOverdue, tool.IsInstrument && !tool.OutOfUse && !tool.IsCalibratedOn(line.Day)),
            (HoldReason.CalibrationUnknown, tool.IsInstrument && !tool.OutOfUse && tool.IsCalibratedOn(line.Day) && !tool.IsCalibratedOn(clock.Latest(line.Day))));
    }

    /// <summary>The road test that the car has not come back from.</summary>
    private Line? RoadTest => NewestRelease(ReleaseKind.RoadTest) is { } test && WithdrawalOf(test.Number) is null && !IsBack(test.Number) ? test : null;

    private bool IsBack(long release) => lines.Any(line => line.Entry is RoadTestEnded fact && fact.Release == release);

    private IReadOnlyList<string> WithoutOf(ReleaseKind kind, Release release) =>
        [.. UndoneNames.Where(name => IsAfterDrive(name) && (kind == ReleaseKind.RoadTest || (kind == ReleaseKind.Road && release.CustomerAcceptance is not null)))];
}
