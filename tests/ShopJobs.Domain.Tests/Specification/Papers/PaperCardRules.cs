using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Papers;

/// <summary>What a card is worth that was filled in by hand and is entered afterwards.</summary>
internal static class PaperCardRules
{
    private const string Declared = "by anybody else, or with evidence missing, declared, which doesn't count";

    public static RuleBook<PaperCard> Book() => Faults(
        new RuleBook<PaperCard>("A card that is entered afterwards", PaperCard.Start, card => card.ToString())
            .Action("Pull it by the card", card => !card.Pulled, card => card with { Pulled = true, Whole = true })
            .Action("Pull it and forget the tool", card => !card.Pulled, card => card with { Pulled = true })
            .Action("Sign in anew", card => card is { Waits: true, OtherSession: false }, card => card with { OtherSession = true })
            .Action("Its doer enters it", card => card.Waits, card => card.EnterOwn())
            .Action("Another enters it", card => card.Waits, card => card.Declare())
            .Action("Pull it on top", card => card is { Declared: true, Counts: false, Held: false }, card => card.PullOnTop())
            .Action("Void the declaration", card => card is { BackOff: true, Voided: false, Held: false }, card => card with { Voided = true })
            .Action("A second person confirms that it was never pulled", card => card is { BackOff: true, Voided: true, Held: false }, card => card with { BackOff = false })
            .Action("Back it off and pull it", card => card is { Declared: true, BackOff: true, Held: false }, card => card with { BackOff = false, Counts = true })
            .Rests(card => card.Counts || card.Held)
            .On("Its doer enters it", "17", "AS-A-QUEUED-PULL", "by the doer a late report, judged like a queued pull",
                (before, _) => before.Whole, (before, after) => after.Counts == !before.OtherSession && after.Held == before.OtherSession)
            .On("Its doer enters it", "paper", "EVIDENCE-OR-NOTHING", Declared, (before, _) => !before.Whole, (_, after) => after is { Declared: true, Counts: false })
            .On("Another enters it", "paper", "NOT-BY-ANOTHER", Declared, (_, _) => true, (_, after) => after is { Declared: true, Counts: false })
            .On("Another enters it", "paper", "STAYS-AS-IT-WAS", "the nut stays as it was", (_, _) => true, (_, after) => after is { Held: false, BackOff: true })
            .On("Pull it on top", "3", "ON-TOP-NEVER-COUNTS", "a second pull on top never counts", (before, _) => before.BackOff, (_, after) => after is { Counts: false, Held: true })
            .On("Void the declaration", "8", "ONE-ALONE-FREES-NONE", "No single person's sequence of corrections turns a position that does not count into one that does",
                (_, _) => true, (_, after) => after is { BackOff: true, Counts: false })
            .Ends("17", "ENTERED-BY-ITS-DOER", "The power was off, its doer pulled by the card, came back and entered it", card => card is { Counts: true, Declared: false })
            .Ends("paper", "BACKED-OFF-AND-REDONE", "Another entered it, and it was backed off and pulled again", card => card is { Counts: true, Declared: true, Voided: false }));

    private static RuleBook<PaperCard> Faults(RuleBook<PaperCard> book) => book
        .Fault("a card of an earlier session counts", "AS-A-QUEUED-PULL", "Its doer enters it",
            (before, _) => before is { Whole: true, OtherSession: true }, (_, card) => card with { Counts = true })
        .Fault("a card without a tool counts", "EVIDENCE-OR-NOTHING", "Its doer enters it", (before, _) => !before.Whole, (_, card) => card with { Counts = true })
        .Fault("a card that another enters counts", "NOT-BY-ANOTHER", "Another enters it", (_, _) => true, (_, card) => card with { Counts = true })
        .Fault("a declaration is forgotten at the next pull", "STAYS-AS-IT-WAS", "Another enters it", (_, _) => true, (_, card) => card with { BackOff = false })
        .Fault("a pull on top of a declared one counts", "ON-TOP-NEVER-COUNTS", "Pull it on top",
            (before, _) => before.BackOff, (_, card) => card with { Counts = true, Held = false })
        .Fault("voiding the declaration alone frees the nut", "ONE-ALONE-FREES-NONE", "Void the declaration", (_, _) => true, (_, card) => card with { BackOff = false });
}
