using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Corrections;

/// <summary>What could be wrong with corrections, each fault with the requirement that has to notice it.</summary>
internal static class CorrectionFaults
{
    public static RuleBook<CorrectedPull> Of(RuleBook<CorrectedPull> book) => book
        .Fault("one person makes a short pull count by restating it over and using it as it is", "NOBODY-ALONE", "Use as is",
            (before, after) => !after.Granted && before.Hands == after.By,
            (_, pull) => pull with { Counts = true, Used = true, Raised = People.Nobody })
        .Fault("a figure restated into the range counts at once", "NEVER-MADE-VALID", "Restate",
            (before, after) => !before.Held && after.Inside, (_, pull) => pull with { Counts = true })
        .Fault("the corrector confirms himself", "CONFIRMED-BY-ANOTHER", "Confirm",
            (before, after) => !after.Granted && after.By == before.Corrector, (_, pull) => pull with { Granted = true })
        .Fault("a confirmed figure never counts", "CONFIRMED-COUNTS", "Confirm",
            (_, after) => after.Granted, (_, pull) => pull with { Counts = false })
        .Fault("a witness outlives the correction", "WITNESS-FALLS", "Restate",
            (before, _) => before.Witness != People.Nobody, (before, pull) => pull with { Witness = before.Witness })
        .Fault("anybody's confirmation keeps the witness", "SAME-WITNESS-KEEPS", "Confirm",
            (before, after) => after is { Granted: true, Counts: true }, (before, pull) => pull with { Witness = before.Former })
        .Fault("the witness who confirms the figure has to look again", "SAME-WITNESS-KEEPS", "Confirm",
            (before, after) => after.Witness != before.Witness, (_, pull) => pull with { Witness = People.Nobody })
        .Fault("a correction clears the hold", "HOLD-OUTLIVES-CORRECTION", "Restate",
            (before, after) => before.Held && after.Inside, (_, pull) => pull with { Raised = People.Nobody })
        .Fault("a slip of typing stays held", "SLIP-LIFTS-ITS-HOLD", "Confirm",
            (before, after) => before.Held && !after.Held, (before, pull) => pull with { Raised = before.Raised, Counts = false })
        .Fault("anybody's correction lifts the hold", "SLIP-LIFTS-ITS-HOLD", "Confirm",
            (before, after) => before.Held && after.Granted && after.Inside, (_, pull) => pull with { Raised = People.Nobody, Counts = true })
        .Fault("who raised the hold by a correction decides it", "DECIDED-BY-ANOTHER", "Use as is",
            (before, after) => before.Correctors == after.By && !after.Granted,
            (_, pull) => pull with { Granted = true })
        .Fault("a figure restated out of the range goes on counting", "OUTSIDE-NEVER-COUNTS", "Restate",
            (before, after) => before.Counts && !after.Inside, (_, pull) => pull with { Counts = true });
}
