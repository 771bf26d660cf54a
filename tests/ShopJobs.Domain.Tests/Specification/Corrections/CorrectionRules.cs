using System.Numerics;
using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Corrections;

/// <summary>What corrections of one pull amount to: Ann pulled it, anybody restates it, twice at most.</summary>
internal static class CorrectionRules
{
    public static RuleBook<CorrectedPull> Book() =>
        CorrectionFaults.Of(Courses(Requirements(Actions(new RuleBook<CorrectedPull>("Corrections", default, pull => pull.ToString())))));

    private static RuleBook<CorrectedPull> Actions(RuleBook<CorrectedPull> book) => book
        .Action("Pull", Restatement.Figures, (pull, _) => pull.Now == Figure.None, (_, figure) => CorrectedPull.Pulled(figure))
        .Action("Restate", Restatement.All, MayBeAsked, (pull, to) => pull.Restate(to))
        .Action("Confirm", Persons.Each, (pull, _) => pull.Corrector != People.Nobody, (pull, person) => pull.Confirm(person))
        .Action("Use as is", Persons.Each, Decidable, (pull, person) => pull.UseAsIs(person))
        .Action("Witness", [People.Bob, People.Cy], Seeable, (pull, person) => pull.Look(person))
        .Rests(pull => pull.Held || pull.Used || pull.Corrections == 2);

    private static bool MayBeAsked(CorrectedPull pull, Restatement to) =>
        pull.Now != Figure.None && to.To != pull.Now && !pull.Used && pull.Corrections < 2
        && (!pull.Held || pull.Raised == People.Ann || to.By == People.Ann);

    private static bool Decidable(CorrectedPull pull, People person) =>
        pull.Held && pull.Now == Figure.Over && (pull.Corrector == People.Nobody || !pull.IsSecond(person));

    private static bool Seeable(CorrectedPull pull, People person) =>
        pull.Counts && !pull.Used && pull.Witness == People.Nobody && !pull.Correctors.Has(person);

    private static RuleBook<CorrectedPull> Requirements(RuleBook<CorrectedPull> book) => book
        .Whenever("8", "NOBODY-ALONE",
            "No single person's sequence of corrections turns a position that does not count into one that does",
            (before, after) => !before.Counts && after.Counts && before.Now != Figure.None,
            (before, after) => BitOperations.PopCount((uint)(before.Hands | after.By)) > 1 || before.Corrections == 0)
        .On("Restate", "section 2", "NEVER-MADE-VALID",
            "it never makes valid what was not, unless a second person with the right, not the doer, confirms it with a reason",
            (before, _) => !before.Counts,
            (_, after) => !after.Counts)
        .On("Confirm", "8", "CONFIRMED-BY-ANOTHER",
            "a second person (neither doer nor corrector) confirms",
            (_, after) => after.Granted,
            (before, after) => after.By != People.Ann && !before.Correctors.Has(after.By))
        .On("Confirm", "section 2", "CONFIRMED-COUNTS",
            "unless a second person with the right, not the doer, confirms it with a reason",
            (before, after) => after.Granted && before is { Inside: true, Held: false },
            (_, after) => after.Counts)
        .On("Restate", "8", "WITNESS-FALLS",
            "Voiding or restating re-judges every sign-off that rested on the old entry and voids its witness",
            (before, _) => before.Witness != People.Nobody,
            (_, after) => after.Witness == People.Nobody)
        .On("Confirm", "8", "SAME-WITNESS-KEEPS",
            "A correction that a second person confirms keeps the witness where the same witness confirms the figure",
            (before, after) => after.Granted && before.Former != People.Nobody && before.Witness == People.Nobody,
            (before, after) => after.Witness == (before.Former == after.By ? before.Former : People.Nobody))
        .On("Restate", "7", "HOLD-OUTLIVES-CORRECTION",
            "A hold is cleared only by its decision: opening, voiding, undo, correction, a new job or a revised procedure leave it standing",
            (before, _) => before.Held,
            (_, after) => after is { Held: true, Counts: false })
        .On("Confirm", "7", "SLIP-LIFTS-ITS-HOLD",
            "a correction, in order, of the one figure that raised it (a slip of typing); each said by the doer and confirmed by a second person",
            (before, after) => after.Granted && before is { Held: true, Now: not Figure.Over },
            (before, after) => after.Held == (before.Corrector != People.Ann))
        .On("Use as is", "7, 8", "DECIDED-BY-ANOTHER",
            "until a person with the right, not the doer, decides",
            (_, after) => after.Granted,
            (before, after) => after.By != People.Ann && !before.Correctors.Has(after.By))
        .Always("1", "OUTSIDE-NEVER-COUNTS",
            "A position counts when every visit of its final stage has a record that met that stage's own evidence",
            pull => pull.Inside || pull.Used || !pull.Counts);

    private static RuleBook<CorrectedPull> Courses(RuleBook<CorrectedPull> book) => book
        .Ends("7", "SLIP-MENDED", "A confirmed correction of a typing slip lifts the hold of the pull",
            pull => pull is { Counts: true, Used: false, Corrections: 1, Raised: People.Nobody, Correctors: People.Ann, Hands: not People.Nobody })
        .Ends("4", "CONFIRMER-WITNESSES", "A slip whose confirmer is the only possible witness",
            pull => pull is { Correctors: People.Ann | People.Bob, Witness: People.Cy, Counts: true })
        .Ends("8", "WITNESS-KEPT", "The same witness confirms the figure",
            pull => pull is { Correctors: People.Bob, Witness: People.Cy, Granted: true });
}
