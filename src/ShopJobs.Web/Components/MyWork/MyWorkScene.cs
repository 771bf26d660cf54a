using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.JobEnds;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.MyWork;

/// <summary>One person's work: what can be done now, what waits for this person as witness, what this person waits for.</summary>
/// <param name="Person">Whose list it is.</param>
/// <param name="Now">Steps given to this person whose gate is open, nearest car first.</param>
/// <param name="Witness">Stages others did that this person may look at.</param>
/// <param name="Waiting">Steps given to this person that wait for somebody or something else, with why.</param>
/// <param name="Later">How many more steps of this person only come after others of the same list.</param>
/// <param name="Free">Steps that could begin and are given to nobody.</param>
public sealed record MyWorkScene(
    PersonId Person, IReadOnlyList<WorkItem> Now, IReadOnlyList<WorkItem> Witness, IReadOnlyList<WorkItem> Waiting, int Later, IReadOnlyList<WorkItem> Free)
{
    /// <summary>What waits for a decision, a confirmation or a signature that this person may give, by car.</summary>
    public IReadOnlyList<DecisionsOfCar> Decisions { get; init; } = [];

    /// <summary>Cars that are here and have joints to re-torque after their drive, for who may record.</summary>
    public IReadOnlyList<DecisionsOfCar> Due { get; init; } = [];

    /// <summary>Steps that somebody says are wrong and that wait for an author; empty for anybody else.</summary>
    public IReadOnlyList<DecisionItem> Remarks { get; init; } = [];

    /// <summary>Nothing at all is on the list.</summary>
    public bool IsEmpty => Now.Count + Witness.Count + Waiting.Count + Free.Count + Decisions.Count + Due.Count + Remarks.Count == 0;

    /// <summary>Sorts every open step of every car. The car this person wrote to last is the nearest, then cars by where they stand.</summary>
    public static MyWorkScene Of(
        Present here, IReadOnlyList<CarReading> readings, IReadOnlyDictionary<CarId, Car> cars, IReadOnlyList<Assignment> assigned,
        JobStateWords? states = null)
    {
        ArgumentNullException.ThrowIfNull(here);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(cars);
        ArgumentNullException.ThrowIfNull(assigned);
        var steps = readings
            .OrderByDescending(reading => LastTouched(reading.State, here.Person))
            .ThenBy(Rank)
            .ThenBy(reading => cars[reading.Car].Name, StringComparer.Ordinal)
            .SelectMany(reading => reading.State.RunningJobs.SelectMany(job => Open(reading, job, states)))
            .ToList();
        var mine = steps.Where(step => assigned.Any(row => row.PersonId == here.Person && IsFor(row, step))).ToList();
        var later = mine.Where(step => step.WaitsOnlyFor(before => mine.Exists(other => other.Job == step.Job && other.Step == before))).ToList();
        var free = steps.Where(step => !assigned.Any(row => IsFor(row, step)) && step.Why is null);
        return new MyWorkScene(
            here.Person,
            [.. mine.Where(step => step.Why is null).Select(Item)],
            [.. readings.Where(_ => here.May(Right.Witness)).SelectMany(reading => ToWitness(reading, here.Person)).Select(Item)],
            [.. mine.Where(step => step.Why is not null).Except(later).Select(Item)],
            later.Count,
            [.. free.Select(Item)])
        {
            Decisions = DecisionsOfCar.Of(here, InOrder(), cars),
            Due = DecisionsOfCar.Due(here, InOrder(), cars),
        };

        IEnumerable<CarReading> InOrder() => readings.OrderBy(Rank).ThenBy(reading => cars[reading.Car].Name, StringComparer.Ordinal);

        int Rank(CarReading reading) => reading.Now.Places.RankOf(cars[reading.Car].Place);

        WorkItem Item(OpenStep step)
        {
            var car = cars[step.Reading.Car];
            return new(car, step.Reading.Now.Places.NameOf(car.Place), step.Job.Id, step.Step, step.Why ?? step.Words);
        }
    }

    // Of a job on hold one line says that it rests; of one that was taken back the lead sees to what it opened.
    private static IEnumerable<OpenStep> Open(CarReading reading, JobBook job, JobStateWords? states)
    {
        var placed = reading.Placed(job);
        if (reading.State.Visit is { IsOpen: false })
        {
            return placed.Steps.Where(step => reading.State.StandingOf(job, placed, step) != StepStanding.Signed).Take(1)
                .Select(step => new OpenStep(reading, job, step, "", "The car is not here. Next: it comes in again."));
        }

        if (!job.IsAtWork)
        {
            return placed.Steps.Where(step => job.OnHold is not null && reading.State.StandingOf(job, placed, step) != StepStanding.Signed).Take(1)
                .Select(step => new OpenStep(reading, job, step, "", $"This job is {states?.Of(job) ?? "on hold"}. Next: the lead resumes it."));
        }

        return from step in placed.Steps
               where reading.State.StandingOf(job, placed, step) != StepStanding.Signed && !IsSignedWithALaterOne(reading, job, step)
               let gate = reading.HoldsBeforeStart(job, step)
               let next = reading.State.NextOn(reading.Now, job, placed, step)
               select new OpenStep(reading, job, step, WordsOf(reading, job, step, next), WhyItWaits(gate, next, reading.Now));
    }

    // Of what this person has finished at one place the last one is named: one PIN signs it with those before it.
    private static bool IsSignedWithALaterOne(CarReading reading, JobBook job, StepInstance step)
    {
        var placed = reading.Placed(job);
        return !job.Finished.IsEmpty && !step.IsSignedByItself() && placed.Steps.Any(later => later != step && later.Place == step.Place && !later.IsSignedByItself()
            && reading.State.FinishedOf(job, placed, later)?.Person == reading.Now.Person
            && reading.State.FinishedBefore(reading.Now.Person, job, placed, later).Contains(step));
    }

    // A step without joints of its own has no next action on one.
    private static string WordsOf(CarReading reading, JobBook job, StepInstance step, NextAction next) =>
        reading.State.FinishedOf(job, reading.Placed(job), step) is { } finished
            ? finished.Person == reading.Now.Person ? "Done by you: sign it" : $"Done by {reading.Now.PersonName(finished.Person)} and not signed: look at it and sign it"
        : next is NextAction.Done && step.Work.Count == 0 ? "Do what the step says and sign it" : NextWords.Of(next, reading.Now);

    private static string? WhyItWaits(IReadOnlyList<HoldPoint> gate, NextAction next, Circumstances now) => gate is [var first, ..] && now.Say(first) is var said
        ? $"{said.Words}. Next: {said.Next}."
        : next is NextAction.Stopped or NextAction.Look or NextAction.Countersign or NextAction.CountersignStep ? $"{NextWords.Of(next, now)}." : null;

    private static IEnumerable<OpenStep> ToWitness(CarReading reading, PersonId person) =>
        from job in reading.State.RunningJobs
        where job.IsAtWork
        from awaited in reading.State.AwaitingWitness(reading.Placed(job))
        where !awaited.Workers.Contains(person)
        select new OpenStep(
            reading, job, awaited.Step,
            $"Witness {awaited.Instance.Group.Name} {awaited.Instance.Place}{NextWords.StageOf(awaited.Instance.Group, awaited.Stage)}", null);

    private static bool IsFor(Assignment row, OpenStep step) =>
        row.JobId == step.Job.Id && (row.StepInstanceId is null || row.StepInstanceId == step.Step.Id);

    private static long LastTouched(CarState state, PersonId person) => state.Positions.Values
        .SelectMany(book => book.Pulls).Where(pull => pull.Person == person).Select(pull => pull.At.Ticks).DefaultIfEmpty().Max();

    private sealed record OpenStep(CarReading Reading, JobBook Job, StepInstance Step, string Words, string? Why)
    {
        /// <summary>True when it waits for nothing but steps that are on the same list.</summary>
        public bool WaitsOnlyFor(Func<StepInstance, bool> onList)
        {
            var placed = Reading.Placed(Job);
            return Reading.HoldsBeforeStart(Job, Step) is { Count: > 0 } gate
                && gate.All(point => point.Reason is HoldReason.StepBefore or HoldReason.Cure)
                && placed.AllBefore(Step).Where(before => Reading.State.StandingOf(Job, placed, before) != StepStanding.Signed) is var open
                && open.Any() && open.All(onList);
        }
    }
}
