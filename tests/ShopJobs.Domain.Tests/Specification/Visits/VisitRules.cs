using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Visits;

/// <summary>Which moves and departures are refused, which are recorded, and what follows from those that should not have been.</summary>
internal static class VisitRules
{
    private const string Lift = "two cars on one lift; moving a car off a lift while the car-move check is red";
    private const string Facts = "Permissions are refused; facts are recorded";
    private const string Alarm = "Car must be moved with work open: list of loosened items and a red hold; no road use";

    public static RuleBook<VisitedCar> Book() => Faults(Courses(Requirements(Actions(
        new RuleBook<VisitedCar>("Visits and moves", VisitedCar.Start, car => car.ToString())))));

    private static RuleBook<VisitedCar> Actions(RuleBook<VisitedCar> book) => book
        .Action("Come in", Enum.GetValues<Stands>(), (_, _) => true, (car, to) => car.ComeIn(to))
        .Action("Ask to move", Enum.GetValues<Stands>(), (_, _) => true, (car, to) => car.Move(to))
        .Action("Say that it was moved", VisitedCar.Moves, (_, _) => true, (car, move) => car.Moved(move.Who, move.To))
        .Action("Look over", Persons.Each, (_, _) => true, (car, who) => car.LookOver(who))
        .Action("Ask to drive away", _ => true, car => car.Drive())
        .Action("Ask to load it", _ => true, car => car.Load())
        .Action("Say that it was driven away", _ => true, car => car.Driven())
        .Action("Say that it was loaded", _ => true, car => car.Loaded())
        .Action("Open a nut", car => car is { Here: true, Loose: false }, car => car.Open())
        .Action("Close it", car => car is { Here: true, Loose: true }, car => car.Close())
        .Action("Release to the road", car => car.Here, car => car.Release())
        .Action("Another car comes on the lift", car => !car.Taken && !(car.Here && car.At == Stands.Lift), car => car.OtherCar(true))
        .Action("The other car goes", car => car.Taken, car => car.OtherCar(false));

    private static RuleBook<VisitedCar> Requirements(RuleBook<VisitedCar> book) => book
        .On("Ask to move", "moves", "MOVE-ASKS-THE-GATE", Lift,
            (before, _) => before.Loose, (before, after) => !after.Granted && after.At == before.At)
        .On("Ask to move", "moves", "MOVES-WHERE-IT-MAY", Lift,
            (before, after) => before is { Here: true, Loose: false } && after.To != before.At && before.HasRoom(after.To), (_, after) => after.Granted && after.At == after.To)
        .On("Say that it was moved", "moves", "MOVED-IS-RECORDED", Facts,
            (before, after) => before.Here && after.To != before.At && before.HasRoom(after.To), (_, after) => after.Granted && after.At == after.To)
        .On("Say that it was moved", "moves", "MOVED-IS-LOOKED-OVER", Alarm,
            (before, after) => before.Loose && after.Granted, (_, after) => after.Movers.Has(after.By))
        .Always("moves", "ONE-CAR-ON-A-LIFT", Lift, car => !(car is { Here: true, At: Stands.Lift, Taken: true }))
        .On("Release to the road", "moves", "LOOKED-OVER-FIRST", Alarm,
            (before, _) => before.ToLookOver, (_, after) => !after.Granted)
        .On("Look over", "moves", "NOT-BY-A-MOVER", "A witness is nobody who recorded",
            (before, after) => before.Movers.Has(after.By), (_, after) => !after.Granted)
        .On("Look over", "moves", "LOOKED-OVER-LETS-GO", Alarm,
            (before, after) => before.ToLookOver && !before.Movers.Has(after.By), (_, after) => after is { Granted: true, ToLookOver: false })
        .On("Come in", "visits", "ONE-VISIT-AT-A-TIME", "A car comes in, is worked on, is released, leaves",
            (before, _) => before.Here, (_, after) => !after.Granted)
        .On("Ask to drive away", "visits", "DRIVEN-UNDER-A-RELEASE", "No road use without a release to the road that stands",
            (before, _) => !before.Road, (_, after) => !after.Granted)
        .On("Ask to load it", "visits", "LOADED-WHERE-IT-MAY-BE-MOVED", Lift,
            (before, _) => before.Loose, (_, after) => !after.Granted)
        .On("Say that it was driven away", "visits", "GONE-IS-RECORDED", Facts,
            (before, _) => before.Here, (_, after) => after is { Granted: true, Here: false })
        .On("Say that it was driven away", "visits", "GONE-IS-LOOKED-OVER", Alarm,
            (before, _) => before is { Here: true, Road: false }, (_, after) => after.ToLookOver)
        .On("Say that it was loaded", "visits", "LOADED-IS-LOOKED-OVER", Alarm,
            (before, _) => before is { Here: true, Loose: true }, (_, after) => after.ToLookOver);

    private static RuleBook<VisitedCar> Courses(RuleBook<VisitedCar> book) => book
        .Ends("moves", "OUT-OF-THE-SMOKE", "Moved with a nut open, looked over by somebody else, closed and released", car => car is { Road: true, At: Stands.Lift })
        .Ends("visits", "GONE-AND-BACK", "It left and stands on the lift again with a nut open", car => car is { Here: true, At: Stands.Lift, Loose: true, Movers: People.Ann })
        .Ends("visits", "DRIVEN-HOME", "Released and driven away", car => car is { Here: false, Road: true, Movers: People.Nobody });

    private static RuleBook<VisitedCar> Faults(RuleBook<VisitedCar> book) => book
        .Fault("one list choice moves a car with open nuts", "MOVE-ASKS-THE-GATE", "Ask to move",
            (before, after) => before is { Here: true, Loose: true } && after.To != before.At && before.HasRoom(after.To), (_, car) => car with { At = car.To, Granted = true })
        .Fault("a car that may be moved is refused", "MOVES-WHERE-IT-MAY", "Ask to move",
            (_, after) => after.Granted, (before, car) => car with { At = before.At, Granted = false })
        .Fault("a move that happened is refused", "MOVED-IS-RECORDED", "Say that it was moved",
            (before, after) => after.Granted && before.Loose, (before, car) => before with { To = car.To, By = car.By, Granted = false })
        .Fault("a car moved with open nuts goes on as if nothing were", "MOVED-IS-LOOKED-OVER", "Say that it was moved",
            (before, after) => after.Granted && before.Loose, (before, car) => car with { Movers = before.Movers & ~car.By })
        .Fault("two cars stand on one lift", "ONE-CAR-ON-A-LIFT", "Come in",
            (before, after) => before is { Here: false, Taken: true } && after.To == Stands.Lift, (_, car) => car with { Here = true, At = Stands.Lift, Granted = true })
        .Fault("road is given before anybody looked", "LOOKED-OVER-FIRST", "Release to the road",
            (before, _) => before is { ToLookOver: true, Loose: false }, (_, car) => car with { Road = true, Granted = true })
        .Fault("who moved it looks it over", "NOT-BY-A-MOVER", "Look over",
            (before, after) => before.Movers.Has(after.By), (_, car) => car with { Movers = People.Nobody, Granted = true })
        .Fault("looked over, it still waits", "LOOKED-OVER-LETS-GO", "Look over",
            (_, after) => after.Granted, (before, car) => car with { Movers = before.Movers })
        .Fault("a car comes in twice", "ONE-VISIT-AT-A-TIME", "Come in",
            (before, after) => before.Here && before.HasRoom(after.To), (_, car) => car with { At = car.To, Granted = true })
        .Fault("a car drives away under no release", "DRIVEN-UNDER-A-RELEASE", "Ask to drive away",
            (before, _) => before is { Here: true, Road: false }, (_, car) => car with { Here = false, Granted = true })
        .Fault("a car with open nuts is rolled onto a trailer", "LOADED-WHERE-IT-MAY-BE-MOVED", "Ask to load it",
            (before, _) => before is { Here: true, Loose: true }, (_, car) => car with { Here = false, Granted = true })
        .Fault("a car that is gone stays on the floor", "GONE-IS-RECORDED", "Say that it was driven away",
            (_, after) => after.Granted, (before, car) => before with { To = car.To, By = car.By, Movers = car.Movers, Granted = false })
        .Fault("a car driven away with open nuts comes back as if nothing were", "GONE-IS-LOOKED-OVER", "Say that it was driven away",
            (before, after) => after.Granted && !before.ToLookOver && !before.Road, (_, car) => car with { Movers = People.Nobody })
        .Fault("a car loaded with open nuts comes back as if nothing were", "LOADED-IS-LOOKED-OVER", "Say that it was loaded",
            (before, after) => after.Granted && !before.ToLookOver && before.Loose, (_, car) => car with { Movers = People.Nobody });
}
