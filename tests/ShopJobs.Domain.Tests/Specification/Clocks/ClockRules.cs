using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Clocks;

/// <summary>What a clock that goes back or jumps may do to the book: nothing early, nothing refused.</summary>
internal static class ClockRules
{
    public static RuleBook<ShopClock> Book() => Faults(Courses(Requirements(Actions(
        new RuleBook<ShopClock>("The clock", ShopClock.Start, clock => clock.ToString())))));

    private static RuleBook<ShopClock> Actions(RuleBook<ShopClock> book) => book
        .Action("An hour passes", clock => clock.True < ShopClock.LastHour, clock => clock.Hour())
        .Action("Set the clock by", ShopClock.Jumps, (clock, by) => clock.Off + by is >= -2 and <= 2, (clock, by) => clock.Set(by))
        .Action("Record", _ => true, clock => clock.Record())
        .Action("Put the locker on", clock => clock.CuringSince < 0, clock => clock.Apply())
        .Action("Load the joint", clock => clock is { CuringSince: >= 0, Loaded: false }, clock => clock.Load())
        .Action("The lead signs the time", clock => clock.Doubtful, clock => clock.LeadSigns())
        .Rests(clock => clock.True == ShopClock.LastHour);

    private static RuleBook<ShopClock> Requirements(RuleBook<ShopClock> book) => book
        .On("Record", "14", "NEVER-BACK", "An entry's instant is never before the last one's",
            (before, _) => before.Shows < before.Last, (before, after) => after.Last >= before.Last && !after.WentBack)
        .On("Record", "14", "JUMP-IS-SAID", "where the clock goes back or jumps, the shop's book says so",
            (before, _) => before.Off != 0, (_, after) => after is { Said: true, Doubtful: true })
        .On("Record", "14", "FACTS-NEVER-REFUSED", "facts are never refused for it",
            (before, _) => before.Doubtful || before.Off != 0, (_, after) => !after.Refused)
        .On("Load the joint", "14", "CURE-NEVER-EARLY",
            "what starts or ends in between (cure, re-torque, calibration) waits for his signature",
            (before, after) => after.Loaded && !before.Loaded, (before, _) => before.True - before.CuringSince >= ShopClock.Cure)
        .On("Load the joint", "14", "WAITS-FOR-SIGNATURE",
            "what starts or ends in between (cure, re-torque, calibration) waits for his signature",
            (before, _) => before.InDoubt, (_, after) => !after.Loaded)
        .On("The lead signs the time", "14", "SIGNED-SETS-ANEW", "the lead's signed clock entry sets the time again",
            (before, _) => before.True >= before.Last, (before, after) => !after.Doubtful && after.Last == before.True);

    private static RuleBook<ShopClock> Courses(RuleBook<ShopClock> book) => book
        .Ends("14", "AHEAD-AND-BACK", "Clock two days ahead and back: the cure ends by the lead's signature", clock => clock is { Loaded: true, BySignature: true })
        .Ends("14", "UNDISTURBED", "A cure on a clock that nobody touches", clock => clock is { Loaded: true, Said: false });

    private static RuleBook<ShopClock> Faults(RuleBook<ShopClock> book) => book
        .Fault("an entry takes the clock's instant though it went back", "NEVER-BACK", "Record",
            (before, _) => before.Shows < before.Last, (before, clock) => clock with { Last = before.Shows, WentBack = true })
        .Fault("a jump is not said", "JUMP-IS-SAID", "Record",
            (before, _) => before.Off > 0, (before, clock) => clock with { Said = before.Said })
        .Fault("a pull is refused while the clock is doubtful", "FACTS-NEVER-REFUSED", "Record",
            (_, after) => after.Doubtful, (_, clock) => clock with { Refused = true })
        .Fault("a cure passes in minutes by a jump", "CURE-NEVER-EARLY", "Load the joint",
            (before, _) => !before.InDoubt && Math.Max(before.Shows, before.Last) - before.BookedSince >= ShopClock.Cure, (_, clock) => clock with { Loaded = true })
        .Fault("a cure that began on a doubtful clock ends by itself", "WAITS-FOR-SIGNATURE", "Load the joint",
            (before, _) => before.InDoubt && before.True - before.CuringSince >= ShopClock.Cure, (_, clock) => clock with { Loaded = true })
        .Fault("the lead's signature leaves the doubt", "SIGNED-SETS-ANEW", "The lead signs the time",
            (before, _) => before.True >= before.Last, (_, clock) => clock with { Doubtful = true });
}
