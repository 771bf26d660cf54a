using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Components.Releases;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.MyWork;

/// <summary>One thing that waits for somebody's word, and where it is given.</summary>
/// <param name="Words">What waits.</param>
/// <param name="Act">What is done there.</param>
public sealed record DecisionItem(string Words, string Act, string Href);

/// <summary>What on one car waits for a decision, a confirmation or a signature that this person may give.</summary>
public sealed record DecisionsOfCar(Car Car, IReadOnlyList<DecisionItem> Items)
{
    /// <summary>By car, in the order given; cars on which nothing waits are left out.</summary>
    public static IReadOnlyList<DecisionsOfCar> Of(Present here, IEnumerable<CarReading> readings, IReadOnlyDictionary<CarId, Car> cars)
    {
        ArgumentNullException.ThrowIfNull(here);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(cars);
        return [.. readings.Select(reading => new DecisionsOfCar(cars[reading.Car], [.. ItemsOf(here, reading)])).Where(car => car.Items.Count > 0)];
    }

    /// <summary>By car, in the order given: what is to be re-torqued after the drive on cars that are here.</summary>
    public static IReadOnlyList<DecisionsOfCar> Due(Present here, IEnumerable<CarReading> readings, IReadOnlyDictionary<CarId, Car> cars)
    {
        ArgumentNullException.ThrowIfNull(here);
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(cars);
        return !here.May(Right.Record) ? [] :
        [
            .. from reading in readings
               where reading.State.Visit is not { IsOpen: false }
               let due = DueJoint.Of(reading).Where(joint => joint.IsRipe(reading)).Select(joint => reading.Now.Name(joint.Joint)).ToList()
               where due.Count > 0
               select new DecisionsOfCar(cars[reading.Car], [new DecisionItem(string.Join(", ", due), "Re-torque", Links.ReTorque(reading.Car))]),
        ];
    }

    private static IEnumerable<DecisionItem> ItemsOf(Present here, CarReading reading)
    {
        IEnumerable<DecisionItem> toDecide = [.. Fasteners(reading), .. Work(reading), .. Corrections(reading)];
        return [.. here.May(Right.Decide) ? toDecide : [], .. here.May(Right.Witness) ? Fewer(here, reading) : [], .. here.May(Right.Record) ? Countersigns(here, reading) : [], .. here.May(Right.Lead) ? Suspended(reading).Concat(RunningOut(reading)).Concat(Resting(reading)).Concat(Left(reading)) : []];
    }

    // A joint's fasteners together: they are decided at once where there are several.
    private static IEnumerable<DecisionItem> Fasteners(CarReading reading) =>
        from book in reading.State.Positions.Values
        where Deciding.IsAsked(reading.State, reading.Now, book.Position)
        group book by book.Position.Joint into joint
        let books = joint.OrderBy(book => book.Position.Number).ToList()
        let numbers = EntryNames.Numbers(books.Select(book => (long)book.Position.Number))
        orderby joint.Key.Key, joint.Key.Place
        select new DecisionItem(
            $"{reading.Now.Name(joint.Key)} {numbers}: {string.Join(", ", books.SelectMany(book => WhyOf(reading, book)).Distinct())}",
            books.Count == 1 ? "Decide" : $"Decide {books.Count} at once",
            books.Count == 1 ? Links.Held(reading.Car, books[0].Position) : Links.HeldRow(reading.Car, joint.Key));

    private static IEnumerable<string> WhyOf(CarReading reading, PositionBook book)
    {
        var holds = book.Holds.Where(hold => hold.Decision is null).Select(hold => HoldWords.Of(hold.Reason)).ToList();
        var doubts = reading.State.DoubtsOn(book, reading.Now.Tool).Select(doubt => $"{JointLineWords.ToolName(reading, doubt.Tool)} is in doubt").ToList();
        return holds.Count + doubts.Count == 0 ? ["made for another job"] : holds.Concat(doubts);
    }

    private static IEnumerable<DecisionItem> Work(CarReading reading) =>
        reading.State.UndecidedWork().Select(hold => new DecisionItem($"{HeldWorkWords.Of(reading, hold)}: held", "Decide", Links.HeldWork(reading.Car, hold.Number)));

    private static IEnumerable<DecisionItem> Corrections(CarReading reading) =>
        reading.State.Corrections.Values.GroupBy(correction => correction.Fact.Target).Select(same => same.MaxBy(correction => correction.Number)!)
            .Where(correction => !correction.Confirmed).OrderBy(correction => correction.Number)
            .Select(correction => new DecisionItem(
                $"Entry {correction.Fact.Target} corrected by {reading.Now.PersonName(correction.Person)}: a second person confirms it", "Confirm", Links.Logbook(reading.Car, correction.Number)));

    private static IEnumerable<DecisionItem> Countersigns(Present here, CarReading reading) => Pulls(here, reading).Concat(
        from awaited in reading.State.AwaitingCountersign(reading.Now)
        where awaited.Sign.Person != here.Person
        select new DecisionItem(
            $"{awaited.Step.Title()}: signed by {reading.Now.PersonName(awaited.Sign.Person)}, a trainee, waits for whoever stood by", "Countersign", Links.Step(reading.Car, awaited.Job.Id, awaited.Step.Id)));

    private static IEnumerable<DecisionItem> Pulls(Present here, CarReading reading) =>
        from job in reading.State.RunningJobs
        from step in reading.Placed(job).Steps
        let waiting = step.Work.SelectMany(work => work.Instance.Positions.SelectMany(position => reading.State.Of(position).Pulls)
            .Where(pull => pull.WaitsForAnswer && pull.Person != here.Person && pull.Fact.Job == job.Id && pull.Fact.Group == work.Instance.Group.Id && work.Stages.Contains(pull.Fact.Stage))).ToList()
        where waiting.Count > 0
        select new DecisionItem($"{step.Title()}: {(waiting.Count == 1 ? "one pull waits" : $"{waiting.Count} pulls wait")} for whoever stood by", "Countersign", Links.Step(reading.Car, job.Id, step.Id));

    private static IEnumerable<DecisionItem> Fewer(Present here, CarReading reading) =>
        reading.State.FewerAsked.Values.Where(asked => asked.Person != here.Person).Select(asked => new DecisionItem(
            $"{reading.Now.PersonName(asked.Person)} says that it has fewer joints: a second person looks", "Look", Links.Joints(reading.Car)));

    // A job on hold waits for the lead alone, whoever is on it.
    private static IEnumerable<DecisionItem> Resting(CarReading reading) =>
        from job in reading.State.RunningJobs
        where job.OnHold is not null
        let procedure = reading.Placed(job).Procedure
        select new DecisionItem(
            $"{procedure.Code} {procedure.Title} is on hold since {WallTime.Day(reading.Now.OnTheWall(job.OnHold!.At))}", "Resume or end it", Links.Car(reading.Car));

    // Loose, or to be done again, and no running job works on it.
    private static IEnumerable<DecisionItem> Left(CarReading reading) =>
        from book in ReleaseRules.LeftAlone(reading.State, reading.Now)
        let again = book.Holds.Exists(hold => hold.Decision is not null)
        where again || book.Fitting is Fitting.Open or Fitting.NewHardware
        group again by book.Position.Joint into joint
        orderby joint.Key.Key, joint.Key.Place
        select new DecisionItem(
            $"{reading.Now.Name(joint.Key)}: {(joint.Contains(true) ? "to be done again" : "open")}, and no running job works on it", "Start a job", Links.Car(reading.Car));

    // Given until a re-torque: overdue, it is driven by nobody; done, the release is given again without the limit.
    private static IEnumerable<DecisionItem> RunningOut(CarReading reading) =>
        from kind in (ReleaseKind[])[ReleaseKind.Road, ReleaseKind.Track]
        let standing = reading.StandingOf(kind)
        where standing is { Kind: ReleaseStandingKind.Stands or ReleaseStandingKind.Lapsed, Release.Fact: { LapsesAtKm: not null } or { LapsesOn: not null } }
        let owed = reading.State.OwesAnyReTorque()
        where !owed || standing.Kind == ReleaseStandingKind.Lapsed
        let isOut = reading.State.Visit is { IsOpen: false }
        select !owed ? new DecisionItem($"Its re-torque is done, and the release {kind.Words()} still expires", "Release it again", Links.Release(reading.Car))
            : new DecisionItem(
                $"The release {kind.Words()} has expired: its re-torque is overdue{(isOut ? ", and the car is not here" : "")}",
                isOut ? "Call its owner" : "Re-torque",
                isOut ? Links.Car(reading.Car) : Links.ReTorque(reading.Car));

    private static IEnumerable<DecisionItem> Suspended(CarReading reading) =>
        from kind in ReleaseKinds.All
        where reading.StandingOf(kind).Kind == ReleaseStandingKind.Suspended
        select new DecisionItem($"The release {kind.Words()} is suspended", "Look again", Links.Release(reading.Car));
}
