using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Behind;

/// <summary>A brake behind a wheel. The sentences are the workshop's own order of work: common practice, no source.</summary>
internal static class BehindRules
{
    private const string WheelOff = "What is behind a wheel is worked on while the wheel is off.";
    private const string WheelLast = "A wheel goes on, and counts, when all that is behind it is as found or counts itself.";

    public static RuleBook<BehindWheel> Book() => new RuleBook<BehindWheel>("A brake behind a wheel", default, both => both.ToString())
        .Action("Take the wheel off", both => both.Wheel is not (Stands.Off or Stands.Wrong), both => both.TakeWheelOff())
        .Action("Put the wheel on", both => both.Wheel is Stands.Off, both => both.PutWheelOn())
        .Action("Tighten the wheel", both => both.Wheel is Stands.ByHand, both => both.TightenWheel())
        .Action("Rework the wheel", both => both.Wheel is Stands.Wrong, both => both.TakeWheelOff())
        .Action("Open the bolt", both => both.Bolt is not (Stands.Off or Stands.Wrong), both => both.OpenBolt())
        .Action("Run the bolt down", both => both.Bolt is Stands.Off, both => both.RunBoltDown())
        .Action("Tighten the bolt", both => both.Bolt is Stands.ByHand, both => both.TightenBolt())
        .Action("Rework the bolt", both => both.Bolt is Stands.Wrong, both => both.OpenBolt())
        .On("Run the bolt down", "1", "WHEEL-OFF-BY-HAND", WheelOff, (before, _) => !before.WheelIsOff, (_, after) => after.Bolt == Stands.Put)
        .On("Tighten the bolt", "1", "WHEEL-OFF-AT-PULL", WheelOff, (before, _) => !before.WheelIsOff, (_, after) => after.Bolt == Stands.Wrong)
        .On("Tighten the bolt", "1", "WHEEL-OFF-COUNTS", WheelOff, (before, _) => before.WheelIsOff, (_, after) => after.BoltCounts)
        .On("Put the wheel on", "1", "WHEEL-LAST-BY-HAND", WheelLast, (before, _) => !before.BoltIsFinished, (_, after) => after.Wheel == Stands.Put)
        .On("Tighten the wheel", "1", "WHEEL-LAST-AT-PULL", WheelLast, (before, _) => !before.BoltIsFinished, (_, after) => after.Wheel == Stands.Wrong)
        .On("Tighten the wheel", "1", "WHEEL-LAST-COUNTS", WheelLast, (before, _) => before.BoltIsFinished, (_, after) => after.WheelCounts)
        .On("Open the bolt", "1", "WHEEL-LAST-NOW", WheelLast, (before, _) => before.WheelCounts, (_, after) => !after.WheelCounts)
        .Ends("1", "BRAKE-THEN-WHEEL", "Wheel off, brake done, wheel on: both count", both => both.WheelCounts && both.BoltCounts)
        .Ends("1", "WHEEL-ALONE", "A wheel off and on before a brake that nobody touched", both => both is { WheelCounts: true, Bolt: Stands.Found })
        .Fault("a bolt goes in behind a wheel", "WHEEL-OFF-BY-HAND", "Run the bolt down", (before, _) => !before.WheelIsOff, (_, both) => both with { Bolt = Stands.ByHand })
        .Fault("a bolt is at torque that nobody could reach", "WHEEL-OFF-AT-PULL", "Tighten the bolt", (before, _) => !before.WheelIsOff, (_, both) => both with { Bolt = Stands.Tight })
        .Fault("brakes wait for ever", "WHEEL-OFF-COUNTS", "Tighten the bolt", (before, _) => before.WheelIsOff, (_, both) => both with { Bolt = Stands.Wrong })
        .Fault("a wheel goes on over an open brake", "WHEEL-LAST-BY-HAND", "Put the wheel on", (before, _) => !before.BoltIsFinished, (_, both) => both with { Wheel = Stands.ByHand })
        .Fault("a wheel is torqued over an open brake", "WHEEL-LAST-AT-PULL", "Tighten the wheel", (before, _) => !before.BoltIsFinished, (_, both) => both with { Wheel = Stands.Tight, Bolt = Stands.Tight })
        .Fault("a wheel waits for a brake that nobody touched", "WHEEL-LAST-COUNTS", "Tighten the wheel", (before, _) => before.BoltIsFinished, (_, both) => both with { Wheel = Stands.Wrong })
        .Fault("a brake is opened behind a wheel that goes on counting", "WHEEL-LAST-NOW", "Open the bolt", (before, _) => before.WheelCounts, (before, _) => before);
}
