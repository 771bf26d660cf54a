using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Trainees;

/// <summary>What a trainee's signature is worth, and who makes it whole.</summary>
internal static class TraineeRules
{
    private const string Waits = "trainee is a right whose pulls and steps wait for a countersign by one who stood by";

    public static RuleBook<TaughtStep> Book() => new RuleBook<TaughtStep>("Trainees", default, step => step.ToString())
        .Action("Sign", TaughtStep.Hands, (_, _) => true, (step, hand) => step.Sign(hand))
        .Action("Countersign", TaughtStep.Hands, (_, _) => true, (step, hand) => step.Countersign(hand))
        .Action("Sign the next step", step => !step.Next, step => step.GoOn())
        .Action("Take the answer back", step => step is { Answered: true, First: Signature.Whole }, step => step.TakeBack())
        .Action("Give the trainee the right to record", step => !step.Learnt, step => step with { Learnt = true, Granted = true })
        .On("Sign", "1", "LEARNER-WAITS", Waits, (before, after) => after is { Granted: true, Signer: Hand.Trainee } && !before.Learnt, (_, after) => after.First == Signature.Learner)
        .On("Sign", "1", "MATE-IS-ENOUGH", Waits, (before, after) => after is { Granted: true, Signer: Hand.Mate }, (_, after) => after.First == Signature.Whole)
        .On("Sign the next step", "1", "NOTHING-ON-A-LEARNER", Waits, (before, _) => before.First != Signature.Whole, (_, after) => !after.Next)
        .On("Sign the next step", "1", "ANSWERED-IS-WHOLE", Waits, (before, _) => before.First == Signature.Whole, (_, after) => after.Next)
        .On("Countersign", "1", "NOT-FOR-HIMSELF", Waits, (before, after) => after.Granted, (before, _) => before.Signer == Hand.Trainee && before.First == Signature.Learner)
        .On("Countersign", "1", "ONLY-BY-THE-MATE", Waits, (before, after) => before.First != after.First, (_, after) => after is { First: Signature.Whole, Answered: true })
        .On("Take the answer back", "1", "NOBODY-ANSWERS", Waits, (_, _) => true, (_, after) => after is { First: Signature.Void, Next: false })
        .Ends("1", "TAUGHT", "A trainee signs, one who stood by answers, the work goes on", step => step is { Answered: true, Next: true })
        .Ends("1", "LEARNT", "He may record by now and signs again what waited", step => step is { First: Signature.Whole, Signer: Hand.Trainee, Answered: false })
        .Fault("a trainee's signature counts", "LEARNER-WAITS", "Sign", (before, after) => after is { Granted: true, First: Signature.Learner } && !before.Learnt, (_, step) => step with { First = Signature.Whole })
        .Fault("one who may record waits too", "MATE-IS-ENOUGH", "Sign", (_, after) => after is { Granted: true, Signer: Hand.Mate }, (_, step) => step with { First = Signature.Learner })
        .Fault("the next step does not ask who signed", "NOTHING-ON-A-LEARNER", "Sign the next step", (before, _) => before.First == Signature.Learner, (_, step) => step with { Next = true })
        .Fault("what was answered for waits for ever", "ANSWERED-IS-WHOLE", "Sign the next step", (before, _) => before is { First: Signature.Whole, Answered: true }, (_, step) => step with { Next = false })
        .Fault("he got the right and answers for himself", "NOT-FOR-HIMSELF", "Countersign", (before, after) => before is { First: Signature.Whole, Learnt: true } && !after.Granted, (_, step) => step with { Granted = true })
        .Fault("an answer wipes the signature", "ONLY-BY-THE-MATE", "Countersign", (before, after) => after.Granted, (_, step) => step with { First = Signature.Void, Answered = false })
        .Fault("an answer that was taken back still counts", "NOBODY-ANSWERS", "Take the answer back", (_, _) => true, (before, step) => step with { First = before.First });
}
