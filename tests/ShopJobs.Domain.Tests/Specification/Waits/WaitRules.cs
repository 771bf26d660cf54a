using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Waits;

/// <summary>When work goes on over a complete step that is not signed yet, and what one PIN signs.</summary>
internal static class WaitRules
{
    private const string Satisfies =
        "A complete step that isn't signed yet satisfies waits-for for work by the same person at the same place in the same session (a lock and return by the same person is the same session)";

    public static RuleBook<TwoSteps> Book() => Faults(Courses(
        new RuleBook<TwoSteps>("Work over an unsigned step", TwoSteps.Start, steps => steps.ToString())
            .Action("Finish the first step", Plan.All, (steps, _) => steps.FirstBy == People.Nobody, (steps, plan) => steps.Finish(plan))
            .Action("Sign the first step", steps => steps is { FirstBy: not People.Nobody, FirstSigned: false }, steps => steps with { FirstSigned = true, Refused = false })
            .Action("Lock and return", _ => true, steps => steps with { Refused = false })
            .Action("Begin a new session", Persons.Each, (steps, _) => !steps.Second, (steps, person) => steps.TakeOver(person))
            .Action("Do the second step", steps => steps is { FirstBy: not People.Nobody, Second: false }, steps => steps.Pull())
            .Action("Sign both with one PIN", steps => steps is { Second: true, FirstSigned: false, BothSigned: false }, steps => steps.SignTogether())
            .Action("Sign the second step by itself", steps => steps is { Counts: true, FirstSigned: true, BothSigned: false }, steps => steps with { BothSigned = true, Refused = false })
            .On("Do the second step", "15", "SAME-HAND", Satisfies,
                (before, after) => after.Counts && !before.FirstSigned, (before, _) => before.SameHand)
            .On("Do the second step", "15", "NEVER-ACROSS", "never across a witness, a cure or a result",
                (before, after) => after.Counts && !before.FirstSigned, (before, _) => before.Plan.Between == Between.Nothing)
            .On("Do the second step", "15", "WORK-FLOWS", Satisfies,
                (before, _) => before.SameHand && before.Plan.Between == Between.Nothing, (_, after) => after.Counts)
            .On("Do the second step", "15", "SIGNED-SATISFIES", "waits-for defaults to the step above",
                (before, _) => before.FirstSigned, (_, after) => after.Counts)
            .On("Lock and return", "15", "LOCK-IS-NO-END", "a lock and return by the same person is the same session",
                (before, _) => before.FirstBy == before.Who, (before, after) => after.SameHand == before.SameHand)
            .On("Sign both with one PIN", "15", "CLASS-A-BY-ITSELF", "a step that brings class A joints to their final stage is signed by itself",
                (before, _) => before.Plan.ClassAFinal, (_, after) => !after.BothSigned)
            .On("Sign both with one PIN", "15", "ONE-PIN-FOR-SEVERAL", "So one PIN may sign several finished steps of one place, each named and shown",
                (before, _) => before is { Counts: true, Plan.ClassAFinal: false }, (_, after) => after.BothSigned)));

    private static RuleBook<TwoSteps> Courses(RuleBook<TwoSteps> book) => book
        .Ends("15", "IN-ONE-GO", "Hand, snug and ground in one go, then one PIN", steps => steps.BothSigned)
        .Ends("15", "ONE-AFTER-THE-OTHER", "A class A final step: those before it with one PIN, then this one", steps => steps is { BothSigned: true, Plan.ClassAFinal: true })
        .Ends("15", "TAKEN-OVER", "An idle lock in mid-star: somebody else signs before he goes on", steps => steps is { Counts: true, FirstSigned: true, FirstBy: People.Ann, Who: People.Bob });

    private static RuleBook<TwoSteps> Faults(RuleBook<TwoSteps> book) => book
        .Fault("anybody works on over another's unsigned step", "SAME-HAND", "Do the second step",
            (before, _) => before is { FirstSigned: false, Plan.Between: Between.Nothing }, (_, steps) => steps with { Counts = true })
        .Fault("work goes on over a cure", "NEVER-ACROSS", "Do the second step",
            (before, _) => before is { FirstSigned: false, SameHand: true, Plan.Between: Between.Cure }, (_, steps) => steps with { Counts = true })
        .Fault("work goes on over a witness", "NEVER-ACROSS", "Do the second step",
            (before, _) => before is { FirstSigned: false, SameHand: true, Plan.Between: Between.Witness }, (_, steps) => steps with { Counts = true })
        .Fault("every step asks for its PIN before a hand moves", "WORK-FLOWS", "Do the second step",
            (before, _) => !before.FirstSigned, (_, steps) => steps with { Counts = false })
        .Fault("a signed step does not satisfy who waits for it", "SIGNED-SATISFIES", "Do the second step",
            (before, _) => before is { FirstSigned: true, SameHand: false }, (_, steps) => steps with { Counts = false })
        .Fault("an idle lock ends the session", "LOCK-IS-NO-END", "Lock and return",
            (before, _) => before.SameHand, (_, steps) => steps with { InSession = false })
        .Fault("a class A final step is signed with others", "CLASS-A-BY-ITSELF", "Sign both with one PIN",
            (before, _) => before.Plan.ClassAFinal, (_, steps) => steps with { BothSigned = true })
        .Fault("each step asks for its own PIN", "ONE-PIN-FOR-SEVERAL", "Sign both with one PIN",
            (_, after) => after.BothSigned, (_, steps) => steps with { BothSigned = false, FirstSigned = false });
}
