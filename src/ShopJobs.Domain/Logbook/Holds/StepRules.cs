using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What is asked of a position: is it where a step or a release needs it.</summary>
public sealed record PositionQuestion(
    CarState State, Circumstances Now, PositionBook Book, int? Stage, JobBook? Job, GroupInstance? Instance);

/// <summary>One reason why a position does not count.</summary>
public sealed record PositionRule(HoldReason Reason, Func<PositionQuestion, IEnumerable<HoldPoint>> Find);

/// <summary>What is asked of a step instance: may it be signed.</summary>
public sealed record StepQuestion(
    CarState State, Circumstances Now, JobBook Job, PlacedProcedure Placed, StepInstance Step, StepAnswers Answers)
{
    /// <summary>The rules by which positions of groups that it waits for count.</summary>
    public IReadOnlyList<PositionRule> PositionRules { get; init; } = Logbook.PositionRules.All;

    /// <summary>May its work go on; false where it is about the signature. Work goes on over what the same hand has just finished.</summary>
    public bool ForWork { get; init; }

    /// <summary>Finished steps that the same PIN signs.</summary>
    public IReadOnlyList<string> With { get; init; } = [];
}

/// <summary>Ticks and values given on the screen.</summary>
public sealed record StepAnswers(IReadOnlyList<string> Ticks, IReadOnlyList<MeasuredValue> Values)
{
    public static readonly StepAnswers None = new([], []);
}

/// <summary>One reason why a step waits.</summary>
public sealed record StepRule(HoldReason Reason, Func<StepQuestion, IEnumerable<HoldPoint>> Find);

/// <summary>The rules that hold a step's sign-off, each one element of a list.</summary>
public static class StepRules
{
    /// <summary>Rules that do not look at joints.</summary>
    public static readonly IReadOnlyList<StepRule> All =
    [
        new(HoldReason.AlreadySigned, AlreadySigned),
        new(HoldReason.StepHeld, StepsHeld),
        new(HoldReason.StepBefore, StepsBefore),
        new(HoldReason.GroupBefore, GroupsBefore),
        new(HoldReason.ResultMissing, ResultsMissing),
        new(HoldReason.ResultHeld, ResultsHeld),
        new(HoldReason.ResultJointLoose, ResultJoints),
        new(HoldReason.Cure, Cures),
        new(HoldReason.NotYetOpened, NotYetOpened),
        new(HoldReason.NotRunDown, NotRunDown),
        new(HoldReason.TemporaryFitted, TemporaryFitted),
        new(HoldReason.TickMissing, TicksMissing),
        new(HoldReason.MeasureMissing, MeasuresMissing),
        new(HoldReason.MeasureOutside, MeasuresOutside),
    ];

    private static IEnumerable<HoldPoint> AlreadySigned(StepQuestion q) =>
        q.State.StandingOf(q.Job, q.Placed, q.Step) is var standing
        && (standing == StepStanding.Signed || (standing == StepStanding.AwaitsCountersign && !q.Now.May(Right.Record)))
            ? [Point(q, HoldReason.AlreadySigned)]
            : [];

    // Held itself, or after one that is held.
    private static IEnumerable<HoldPoint> StepsHeld(StepQuestion q) => q.State.WorkHolds.IsEmpty
        ? []
        : from step in q.Placed.AllBefore(q.Step).Prepend(q.Step)
          where q.State.IsHeld(q.Job.Id, step.Id)
          select Point(q, HoldReason.StepHeld) with { Unsigned = new UnsignedStep(step, q.State.StandingOf(q.Job, q.Placed, step)) };

    private static IEnumerable<HoldPoint> ResultsHeld(StepQuestion q) =>
        from name in q.Placed.ResultsOf(q.Step)
        where q.State.Results.TryGetValue(name, out var result) && q.State.IsHeld(result)
        select Point(q, HoldReason.ResultHeld) with { Name = name };

    private static IEnumerable<HoldPoint> StepsBefore(StepQuestion q) =>
        from before in q.Placed.AllBefore(q.Step)
        let standing = q.State.StandingOf(q.Job, q.Placed, before)
        where standing != StepStanding.Signed && !q.With.Contains(before.Id)
        let finished = q.State.FinishedOf(q.Job, q.Placed, before)
        where finished is null || !q.ForWork || !FinishedSteps.GoesOn(q, before, finished)
        select Point(q, HoldReason.StepBefore) with { Unsigned = new UnsignedStep(before, standing) { Finished = finished is not null } };

    private static IEnumerable<HoldPoint> GroupsBefore(StepQuestion q) =>
        from wait in q.Step.Step.WaitsFor.OfType<WaitsFor.ForGroup>()
        from instance in q.Placed.GroupsFor(wait.Group, q.Step.Place)
        from position in instance.Positions
        from rule in q.PositionRules
        from found in rule.Find(new PositionQuestion(q.State, q.Now, q.State.Of(position), wait.Stage, q.Job, instance))
        select Point(q, HoldReason.GroupBefore) with { Position = position, Because = found };

    private static IEnumerable<HoldPoint> ResultsMissing(StepQuestion q) =>
        from name in q.Placed.ResultsOf(q.Step)
        where !q.State.HasResult(name, q.Now.Tool)
        select Point(q, HoldReason.ResultMissing) with { Name = name };

    private static IEnumerable<HoldPoint> ResultJoints(StepQuestion q) =>
        from name in q.Placed.RecordsAt(q.Step)
        from kind in q.Now.Register.Kinds.Values
        where !kind.Temporary
        from position in kind.AllPositions()
        where Opening.Undoes(q.Now.Register, kind, position.Place, name)
        let book = q.State.Of(position)
        where !book.IsAsFound
        from rule in q.PositionRules
        from found in rule.Find(new PositionQuestion(q.State, q.Now, book, null, null, null))
        select Point(q, HoldReason.ResultJointLoose) with { Position = position, Name = name, Because = found };

    private static IEnumerable<HoldPoint> Cures(StepQuestion q) =>
        from wait in q.Step.Step.WaitsFor.OfType<WaitsFor.ForCure>()
        from instance in q.Placed.GroupsFor(wait.Group, q.Step.Place)
        let length = TimeSpan.FromHours((double)wait.Hours)
        let finals = Finals(q, instance)
        where finals.Count == 0 || !finals.All(pull => q.Now.Shop.HasPassed(length, pull.At, pull.Fact, q.Now.Shows))
        select Point(q, HoldReason.Cure) with
        {
            Name = instance.Group.Name,
            Hours = wait.Hours,
            Until = finals.Max(pull => (DateTime?)q.Now.Shop.OnThisClock(pull.At, pull.Fact))?.Add(length),
            ClockInDoubt = finals.Count > 0 && q.Now.Shop.ClockInDoubt,
        };

    // The pulls that brought the group to torque; none while a position is not there.
    private static List<Pull> Finals(StepQuestion q, GroupInstance instance)
    {
        var books = instance.Positions.Select(q.State.Of).ToList();
        return books.TrueForAll(q.State.IsAtTorque) ? [.. books.Select(book => book.Last!)] : [];
    }

    private static IEnumerable<HoldPoint> NotYetOpened(StepQuestion q) =>
        from key in q.Step.Step.Opens
        let kind = q.Placed.Register.Kinds[key]
        from place in kind.Places.Where(place => q.Step.Place is null ? q.Job.Fact.Places.Contains(place) : place == q.Step.Place)
        where Enumerable.Range(1, kind.PositionsAt(place)).Select(number => q.State.Of(new Joint(key, place).At(number)))
            .Any(book => book.OpenedBy < q.Job.Number && book.Fitting is not (Fitting.Open or Fitting.NewHardware))
        select Point(q, HoldReason.NotYetOpened) with { Joint = new Joint(key, place) };

    // A step without stages of a group only runs it down by hand; with stages the positions are asked for those.
    private static IEnumerable<HoldPoint> NotRunDown(StepQuestion q) =>
        from work in q.Step.Work
        where work.Stages.Count == 0 && !work.Instance.Group.Temporary
        from position in work.Instance.Positions
        let book = q.State.Of(position)
        where book.Fitting != Fitting.HandTight || !book.Holds.IsEmpty
        select Point(q, HoldReason.NotRunDown) with { Position = position, Because = book.Holds is [var hold, ..] ? new HoldPoint(hold.Reason) : null };

    private static IEnumerable<HoldPoint> TemporaryFitted(StepQuestion q) =>
        from work in q.Step.Work
        where work.Instance.Group.Temporary
        from position in work.Instance.Positions
        where q.State.IsOn(position)
        select Point(q, HoldReason.TemporaryFitted) with { Position = position };

    private static IEnumerable<HoldPoint> TicksMissing(StepQuestion q) =>
        from tick in q.Step.Step.Ticks
        where !q.Answers.Ticks.Contains(tick.Id)
        select Point(q, HoldReason.TickMissing) with { Name = tick.Text };

    private static IEnumerable<HoldPoint> MeasuresMissing(StepQuestion q) =>
        from measure in q.Step.Step.Measures
        where !q.Answers.Values.Any(value => value.Name == measure.Id && value.Unit == measure.Unit)
        select Point(q, HoldReason.MeasureMissing) with { Measure = measure };

    private static IEnumerable<HoldPoint> MeasuresOutside(StepQuestion q) =>
        from measure in q.Step.Step.Measures
        from value in q.Answers.Values.Where(value => value.Name == measure.Id)
        where !measure.Takes(value.Value)
        select Point(q, HoldReason.MeasureOutside) with { Measure = measure, Value = value };

    private static HoldPoint Point(StepQuestion q, HoldReason reason) => new(reason) { Job = q.Job.Id, Step = q.Step.Id };
}
