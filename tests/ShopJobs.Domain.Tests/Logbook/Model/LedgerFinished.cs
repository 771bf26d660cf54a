using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 15: work over a step that is done and not signed, and one PIN for several.
internal sealed partial class Ledger
{
    /// <summary>The session that the next command comes from.</summary>
    public SessionId? Session { get; set; }

    private bool IsOfAnotherSession(SessionId? madeIn) => madeIn is not null && madeIn != Session;

    /// <summary>The newest word that a step is done, since its job was last put on hold or ended.</summary>
    private Line? WordOn(JobReading job, StepAt step) => lines
        .Where(line => line.Entry is StepFinished fact && fact.Job == job.Id && fact.Step == step.Id)
        .LastOrDefault(word => !lines.Skip((int)word.Number).Any(line =>
            (line.Entry is JobPutOnHold hold && hold.Job == job.Id)
            || (line.Entry is JobEnded or JobCancelled or JobTakenBack && line.Closes.Contains(job.Id))));

    private bool IsUntouched(JobReading job, StepAt step, Line word) => !IsVoid(word.Number)
        && !word.Rests.Any(number => At(number).Entry is not StepConfirmed && FellAt(number) is var fell && fell > word.Number && IsOf(job, fell))
        && !JointsOf(job, step).Any(position => IsOpenedAgain(job, position, word.Number));

    /// <summary>The word that a step is done, where it stands and nobody has signed since.</summary>
    public Line? Finished(JobReading job, StepAt step) =>
        WordOn(job, step) is { } word && !(SignOff(job, step)?.Number > word.Number) && IsUntouched(job, step, word)
        && job.Before(step).All(before => DoneBy(job, before) is > 0 and var done && done < word.Number)
            ? word
            : null;

    private long DoneBy(JobReading job, StepAt step) =>
        StandingOf(job, step) != StepStanding.Signed ? Finished(job, step)?.Number ?? 0
        : WordOn(job, step) is { } word && IsUntouched(job, step, word) ? word.Number
        : SignOff(job, step)!.Number;

    // The same person at the same place in the same session; never across a witness, a cure or a result.
    private bool MayGoOn(JobReading job, StepAt over, StepAt step, PersonId person) =>
        Finished(job, over) is { Entry: StepFinished { Session: { } session } } word
        && word.Person == person && session == Session && over.Place == step.Place
        && !Between(over).Concat(Between(step)).Any() && over.Rules.Records.Count == 0
        && !job.WorkOf(over).Any(work => work.Stages.Any(stage => work.Group.Stage(stage).Witness));

    private static IEnumerable<WaitsFor> Between(StepAt step) => step.Rules.WaitsFor.Where(wait => wait is WaitsFor.ForCure or WaitsFor.ForResult);

    private IEnumerable<Reason> OfFinishing(PersonId person, IReadOnlySet<Right> rights, FinishStep finish, DateTime at)
    {
        var job = jobs[finish.Job];
        return WaitsOf(job, job.Step(finish.Step)!, finish.Ticks, finish.Values, rights, at, person).Concat(rights.Contains(Right.Record) ? [] : [new Reason(HoldReason.NoRight)]);
    }

    private IEnumerable<StepAt> SignedWith(ConfirmStep confirm, PersonId person)
    {
        var job = jobs[confirm.Job];
        var step = job.Step(confirm.Step)!;
        return job.Steps.Where(other => confirm.With!.Contains(other.Id) && other.Place == step.Place && job.AllBefore(step).Contains(other)
            && Finished(job, other)?.Person == person);
    }

    private IEnumerable<Reason> OfSigningTogether(PersonId person, IReadOnlySet<Right> rights, ConfirmStep confirm, DateTime at)
    {
        var job = jobs[confirm.Job];
        var step = job.Step(confirm.Step)!;
        var with = SignedWith(confirm, person).ToList();
        return Those(
            (HoldReason.NoRight, !rights.Contains(Right.Record)),
            (HoldReason.NotFinished, confirm.With!.Any(id => !with.Exists(other => other.Id == id))),
            (HoldReason.SignedByItself, with.Append(step).Any(one => BringsClassAToItsEnd(job, one)))).Select(why => new Reason(why))
            .Concat(with.SelectMany(one => WaitsOf(job, one, Said(job, one).Ticks, Said(job, one).Values, rights, at, null, with)))
            .Concat(WaitsOf(job, step, confirm.Ticks, confirm.Values, rights, at, null, with));
    }

    private StepFinished Said(JobReading job, StepAt step) => (StepFinished)Finished(job, step)!.Entry;

    private static bool BringsClassAToItsEnd(JobReading job, StepAt step) =>
        job.WorkOf(step).Any(work => work.Group.Rules is { Risk: RiskClass.A, Temporary: false } && work.Stages.Contains(work.Group.Rules.Stages.Count));

    // Each is signed after the one before it.
    private IReadOnlyList<Line> Together(ConfirmStep confirm, IReadOnlyList<Line> signed, IReadOnlySet<Right> rights) => signed.Aggregate(
        (IReadOnlyList<Line>)[], (done, line) => [.. done, With(done).Understood(confirm, line, rights)]);
}
