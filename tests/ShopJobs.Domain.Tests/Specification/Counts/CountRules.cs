using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Counts;

/// <summary>How many positions a joint has on this car, and who says so.</summary>
internal static class CountRules
{
    private const string Lowered = "A count is lowered by the lead and a second person who looked";
    private const string Runs = "While a job runs its register takes additions at once and nothing less";
    private const string Fits = "a procedure goes only on cars whose positions are its visits, and says what is missing otherwise";

    public static RuleBook<CountedCar> Book() => Faults(Courses(Requirements(
        new RuleBook<CountedCar>("Register and counts", CountedCar.Start, car => car.ToString())
            .Action("Touch the second position", car => car is { Register: true, Count: 2 }, car => car.Touch())
            .Action("Bring it to torque", car => car is { Register: true, Count: 2, Ever: true, Good: false }, car => car.Tighten())
            .Action("The lead lowers the count", car => car is { Register: true, Count: 2, LoweredBy: People.Nobody }, car => car.Lower())
            .Action("Somebody looked", [People.Ann, People.Bob], (car, _) => car is { Register: true, LoweredBy: not People.Nobody, JobRuns: false }, (car, person) => car.Look(person))
            .Action("Somebody looked and found both", car => car.LoweredBy != People.Nobody, car => car.Keep())
            .Action("One more is found", car => car is { Register: true, Count: 1 }, car => car.Add())
            .Action("Put a procedure on it", [1, 2], (car, _) => car is { Register: true, JobRuns: false }, (car, visits) => car.Begin(visits))
            .Action("The job ends", car => car.JobRuns, car => car.End())
            .Action("Empty the register", car => car is { Register: true, JobRuns: false }, car => car.Empty())
            .Action("Write a register", car => !car.Register, car => car.Write())
            .Action("Release to road", _ => true, car => car.Ask()))));

    private static RuleBook<CountedCar> Requirements(RuleBook<CountedCar> book) => book
        .On("Release to road", "16", "NO-REGISTER-NO-RELEASE", "No register, no release to road or track",
            (before, _) => !before.Register, (_, after) => !after.Released)
        .On("Release to road", "16", "EVER-OPENED-STAYS", "a position that was ever opened, fitted or held stays in the AND",
            (before, _) => before is { Ever: true, Good: false }, (_, after) => !after.Released)
        .On("Release to road", "16", "WHAT-IS-LEFT-IS-FREE", "A count is lowered by the lead and a second person who looked",
            (before, _) => before is { Register: true, Count: 1, Ever: false }, (_, after) => after.Released)
        .On("Somebody looked", "16", "LOWERED-BY-TWO", Lowered,
            (before, after) => after.Count < before.Count, (before, after) => !after.Refused)
        .On("Somebody looked", "16", "NOT-BY-HIMSELF", Lowered,
            (_, after) => after.Refused, (_, after) => after is { Count: 2, LoweredBy: not People.Nobody })
        .On("The lead lowers the count", "16", "NOTHING-ALONE", Lowered,
            (_, _) => true, (before, after) => after.Count == before.Count)
        .On("The lead lowers the count", "16", "NOTHING-LESS-IN-A-JOB", Runs,
            (before, _) => before.JobRuns, (_, after) => after is { Refused: true, LoweredBy: People.Nobody })
        .On("One more is found", "16", "ADDED-AT-ONCE", Runs, (_, _) => true, (_, after) => after.Count == 2)
        .On("Somebody looked and found both", "16", "KEPT-AS-IT-IS", Lowered, (_, _) => true, (before, after) => after.Count == before.Count)
        .On("Put a procedure on it", "16", "ONLY-WHERE-IT-FITS", Fits,
            (before, after) => after.Visits != 0 || after.Refused, (before, after) => after.Refused || after.Visits == before.Count);

    private static RuleBook<CountedCar> Courses(RuleBook<CountedCar> book) => book
        .Ends("16", "FOUR-STUD-CAR", "A four-stud car is released on the four it has", car => car is { Count: 1, Released: true })
        .Ends("16", "ONE-MORE-BOLT", "A fifth bolt found in mid-job", car => car is { Count: 2, Visits: 1 });

    private static RuleBook<CountedCar> Faults(RuleBook<CountedCar> book) => book
        .Fault("an empty register is released", "NO-REGISTER-NO-RELEASE", "Release to road",
            (before, _) => !before.Register, (_, car) => car with { Released = true })
        .Fault("a sheared stud is dropped by lowering the count", "EVER-OPENED-STAYS", "Release to road",
            (before, _) => before is { Register: true, Count: 1, Ever: true, Good: false }, (_, car) => car with { Released = true, Refused = false })
        .Fault("a position that the car does not have holds it for ever", "WHAT-IS-LEFT-IS-FREE", "Release to road",
            (before, _) => before.Count == 1, (_, car) => car with { Released = false })
        .Fault("a lowered count is refused and lowered all the same", "LOWERED-BY-TWO", "Somebody looked",
            (_, after) => after.Refused, (_, car) => car with { Count = 1 })
        .Fault("the lead's second look at himself wipes his request", "NOT-BY-HIMSELF", "Somebody looked",
            (_, after) => after.Refused, (_, car) => car with { LoweredBy = People.Nobody })
        .Fault("the lead lowers a count alone", "NOTHING-ALONE", "The lead lowers the count",
            (before, _) => !before.JobRuns, (_, car) => car with { Count = 1 })
        .Fault("a count is lowered under a running job", "NOTHING-LESS-IN-A-JOB", "The lead lowers the count",
            (before, _) => before.JobRuns, (_, car) => car with { LoweredBy = People.Ann, Refused = false })
        .Fault("a bolt found in mid-job waits for the next job", "ADDED-AT-ONCE", "One more is found", (_, _) => true, (_, car) => car with { Count = 1 })
        .Fault("a look that found both lowers the count", "KEPT-AS-IT-IS", "Somebody looked and found both", (_, _) => true, (_, car) => car with { Count = 1 })
        .Fault("a procedure goes on a car that lacks its positions", "ONLY-WHERE-IT-FITS", "Put a procedure on it",
            (before, _) => before.Count == 1, (_, car) => car with { Visits = 2, Refused = false });
}
