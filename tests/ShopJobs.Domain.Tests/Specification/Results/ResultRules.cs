using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Results;

/// <summary>When a result is one: by its joints, its figures and its instrument.</summary>
internal static class ResultRules
{
    public static RuleBook<MeasuredCar> Book() => Faults(Courses(
        new RuleBook<MeasuredCar>("Results", MeasuredCar.AsItCame, car => car.ToString())
            .Action("Measure", _ => true, car => car.Measure(inside: true).Told())
            .Action("Measure outside", _ => true, car => car.Measure(inside: false).Told())
            .Action("Measure without naming the scales", _ => true, car => car.WithoutScales().Told())
            .Action("Open the joint", car => !car.JointOpen, car => car.Open().Told())
            .Action("Bring it to torque", car => car.JointOpen, car => car.Close().Told())
            .Action("Doubt the scales", car => !car.InDoubt, car => car.Doubt().Told())
            .Action("Find the scales good", car => car.InDoubt, car => car.Clear().Told())
            .On("Measure", "2", "NOT-WHILE-OPEN", "a result isn't recorded as good while a joint it depends on is open",
                (before, _) => before.JointOpen, (before, after) => after.Taken == false && after.Weights == before.Weights)
            .On("Open the joint", "2", "OPENING-VOIDS", "A result (alignment, weights, bleed ...) is void when a joint it depends on is opened after it was recorded",
                (before, _) => before.Stands, (_, after) => !after.Stands && !after.MayGo)
            .On("Bring it to torque", "2", "TIGHTENING-VOIDS-NOTHING", "tightening, marking, witnessing and re-torque do not void it",
                (_, _) => true, (before, after) => after.Weights == before.Weights && after.Undone == before.Undone)
            .On("Bring it to torque", "results", "HOLDS-THE-MOVE", "A result that the register wants for it holds the move as it holds the road",
                (before, _) => before.Undone, (_, after) => !after.MayRoll)
            .On("Doubt the scales", "results", "DOUBT-HOLDS-THE-MOVE", "A result that the register wants for it holds the move as it holds the road",
                (before, _) => before.Stands, (_, after) => !after.MayRoll)
            .On("Measure outside", "results", "OUTSIDE-IS-KEPT-AND-NO-RESULT", "values with limits",
                (before, _) => !before.JointOpen, (_, after) => after is { Taken: true, Stands: false, MayGo: false })
            .On("Measure", "results", "SCALES-IN-USE", "Gauges, scales and the alignment rig are registered like wrenches",
                (before, _) => before is { JointOpen: false, Scales: Scales.OutOfUse }, (_, after) => after is { Taken: true, Stands: false, MayGo: false })
            .On("Measure without naming the scales", "results", "SCALES-NAMED", "name, values with limits, instrument, conditions, signed",
                (_, _) => true, (_, after) => after.Taken == false)
            .On("Doubt the scales", "results", "DOUBT-DOOMS", "with a doubt that dooms their results",
                (before, _) => before.Stands, (_, after) => !after.Stands && !after.MayGo)
            .On("Find the scales good", "9", "LIFTED-STANDS-AGAIN", "A doubt suspends sign-offs; lifted, they stand again",
                (before, _) => before is { Weights: Record.Good, Covered: true }, (_, after) => after.Stands)));

    private static RuleBook<MeasuredCar> Courses(RuleBook<MeasuredCar> book) => book
        .Ends("results", "MEASURED-AGAIN", "P1 with alignment and weights voided and recorded again", car => car is { Stands: true, MayGo: true })
        .Ends("results", "FOUND-OUTSIDE", "What is measured outside is written down and holds the car", car => car is { Weights: Record.NoGood, MayGo: false, JointOpen: false });

    private static RuleBook<MeasuredCar> Faults(RuleBook<MeasuredCar> book) => book
        .Fault("weights are taken with the joint open", "NOT-WHILE-OPEN", "Measure",
            (before, _) => before.JointOpen, (_, car) => car with { Weights = Record.Good, Undone = false, Taken = true })
        .Fault("weights outlive an opening", "OPENING-VOIDS", "Open the joint", (before, _) => before.Stands, (before, car) => car with { Weights = before.Weights })
        .Fault("tightening voids", "TIGHTENING-VOIDS-NOTHING", "Bring it to torque", (_, _) => true, (_, car) => car with { Undone = !car.Undone })
        .Fault("a car is rolled before its pedal was held", "HOLDS-THE-MOVE", "Bring it to torque", (before, _) => before.Undone, (_, car) => car with { MayRoll = true })
        .Fault("a car is rolled on a figure in doubt", "DOUBT-HOLDS-THE-MOVE", "Doubt the scales", (before, _) => before.Stands, (_, car) => car with { MayRoll = true })
        .Fault("figures outside their limits are good", "OUTSIDE-IS-KEPT-AND-NO-RESULT", "Measure outside",
            (before, _) => !before.JointOpen, (_, car) => car with { Weights = Record.Good, Undone = false })
        .Fault("scales out of use measure", "SCALES-IN-USE", "Measure",
            (before, _) => before is { JointOpen: false, Scales: Scales.OutOfUse }, (_, car) => car with { Weights = Record.Good, Undone = false })
        .Fault("nobody names the scales", "SCALES-NAMED", "Measure without naming the scales", (_, _) => true, (_, car) => car with { Taken = true })
        .Fault("a doubt passes the weights by", "DOUBT-DOOMS", "Doubt the scales", (before, _) => before.Stands, (_, car) => car with { Covered = false })
        .Fault("the doubt stays on the weights", "LIFTED-STANDS-AGAIN", "Find the scales good",
            (before, _) => before is { Weights: Record.Good, Covered: true }, (_, car) => car with { Covered = true });
}
