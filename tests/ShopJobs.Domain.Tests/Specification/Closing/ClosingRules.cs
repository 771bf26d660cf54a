using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Closing;

/// <summary>What is seen before a car is driven.</summary>
internal static class ClosingRules
{
    private const string Waits = "a signed closing check (tools counted, nothing loose, covers, wheels, fluids) is what road waits for";

    public static RuleBook<ClosedCar> Book() => new RuleBook<ClosedCar>("Closing check", default, car => car.ToString())
        .Action("Release", ClosedCar.Asked, (_, _) => true, (_, asked) => ClosedCar.Ask(asked))
        .On("Release", "closing", "DRIVEN-AFTER-IT", Waits, (_, after) => after.Granted && after.IsDriven, (_, after) => after.Seen == Seen.All)
        .On("Release", "closing", "MOVED-WITHOUT", Waits, (_, after) => after.Kind == ReleaseKind.Move, (_, after) => after.Granted)
        .On("Release", "closing", "WHOLE-IS-ENOUGH", Waits, (_, after) => after.Seen == Seen.All, (_, after) => after.Granted)
        .Fault("a spanner is left on the wishbone", "DRIVEN-AFTER-IT", "Release", (_, after) => after.Seen == Seen.AllButOne && !after.Granted, (_, car) => car with { Granted = true })
        .Fault("a car is not pushed off the lift for want of it", "MOVED-WITHOUT", "Release", (_, after) => after is { Kind: ReleaseKind.Move, Seen: Seen.Nothing }, (_, car) => car with { Granted = false })
        .Fault("a whole check is refused", "WHOLE-IS-ENOUGH", "Release", (_, after) => after.Seen == Seen.All && after.IsDriven, (_, car) => car with { Granted = false });
}
