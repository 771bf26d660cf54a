using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.AsFound;

/// <summary>How a car was found is written down before it is opened, and what was opened all the same is closed all the same.</summary>
internal static class FoundRules
{
    private const string Refused = "Starting the first step of a system whose state as found is neither recorded nor told as unknown is refused";
    private const string Recorded = "Opening it all the same is recorded and says what is lost";

    public static RuleBook<FoundCar> Book() => Faults(
        new RuleBook<FoundCar>("As found", FoundCar.Start, car => car.ToString())
            .Action("Write down what is seen", car => car.Known != Known.Seen, car => car.WriteDown(Known.Seen))
            .Action("Write that it is unknown and the customer told", car => car.Known != Known.Unknown, car => car.WriteDown(Known.Unknown))
            .Action("Ask to begin the step", _ => true, car => car.Ask())
            .Action("Open the nut", car => !car.IsOpen, car => car.Open())
            .Action("Close the nut", car => car.IsOpen, car => car.Close())
            .Action("Leave and come again", car => car != FoundCar.Start, car => car.ComeAgain())
            .On("Ask to begin the step", "as found", "NOT-BEFORE-IT-IS-WRITTEN", Refused,
                (before, _) => before is { Known: Known.Nothing, Opened: false, IsOpen: false }, (_, after) => after.MayBegin == false)
            .On("Ask to begin the step", "as found", "UNKNOWN-AND-TOLD-IS-ENOUGH", "Unknown is an answer where the customer was told",
                (before, _) => before.Known == Known.Unknown, (_, after) => after.MayBegin == true)
            .On("Ask to begin the step", "as found", "WHAT-IS-OPEN-GOES-ON", "What is opened already is never held open by it",
                (before, _) => before.Opened || before.IsOpen, (_, after) => after.MayBegin == true)
            .On("Open the nut", "as found", "OPENING-SAYS-WHAT-IS-LOST", Recorded,
                (before, _) => before.Known == Known.Nothing, (_, after) => after is { Lost: true, Opened: true })
            .On("Open the nut", "as found", "NOTHING-LOST-THAT-IS-WRITTEN", Recorded,
                (before, _) => before.Known != Known.Nothing && !before.Lost, (_, after) => !after.Lost)
            .On("Close the nut", "as found", "WORK-COUNTS-ALL-THE-SAME", "A pull counts whatever is written of how the car was found",
                (_, _) => true, (_, after) => after.Counts == true)
            .On("Leave and come again", "as found", "EACH-VISIT-ANEW", "Each visit asks anew",
                (_, _) => true, (_, after) => after is { Known: Known.Nothing, Opened: false, Lost: false })
            .Ends("as found", "WRITTEN-LATE", "It was opened unseen, said so, told the customer, and the step went on", car => car is { Lost: true, Known: Known.Unknown, MayBegin: true }));

    private static RuleBook<FoundCar> Faults(RuleBook<FoundCar> book) => book
        .Fault("the step begins unseen", "NOT-BEFORE-IT-IS-WRITTEN", "Ask to begin the step",
            (before, _) => before is { Known: Known.Nothing, Opened: false, IsOpen: false }, (_, car) => car with { MayBegin = true })
        .Fault("unknown is no answer", "UNKNOWN-AND-TOLD-IS-ENOUGH", "Ask to begin the step",
            (before, _) => before is { Known: Known.Unknown, Opened: false, IsOpen: false }, (_, car) => car with { MayBegin = false })
        .Fault("an open nut waits for the sheet", "WHAT-IS-OPEN-GOES-ON", "Ask to begin the step",
            (before, _) => before is { Known: Known.Nothing, IsOpen: true }, (_, car) => car with { MayBegin = false })
        .Fault("opening says nothing", "OPENING-SAYS-WHAT-IS-LOST", "Open the nut", (before, _) => before is { Known: Known.Nothing, Lost: false }, (_, car) => car with { Lost = false })
        .Fault("opening always says that something is lost", "NOTHING-LOST-THAT-IS-WRITTEN", "Open the nut",
            (before, _) => before is { Known: Known.Seen, Lost: false }, (_, car) => car with { Lost = true })
        .Fault("a pull on what was opened unseen does not count", "WORK-COUNTS-ALL-THE-SAME", "Close the nut", (before, _) => before.Lost, (_, car) => car with { Counts = false })
        .Fault("the sheet of the last visit stands for this one", "EACH-VISIT-ANEW", "Leave and come again",
            (before, _) => before.Known == Known.Seen, (before, car) => car with { Known = before.Known });
}
