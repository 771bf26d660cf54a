namespace ShopJobs.Domain.Tests.Specification.Trainees;

/// <summary>Who signs or answers.</summary>
internal enum Hand
{
    /// <summary>Learns: has the trainee's right alone, until somebody gives him the right to record.</summary>
    Trainee,

    /// <summary>May record, and stood by.</summary>
    Mate,
}

/// <summary>How the sign-off of a step stands.</summary>
internal enum Signature
{
    None,

    /// <summary>By a trainee, and nobody answers for it.</summary>
    Learner,

    /// <summary>By somebody who may record, or answered for.</summary>
    Whole,

    /// <summary>What it rested on, or the answer for it, was taken back.</summary>
    Void,
}

/// <summary>A step that a trainee may sign, and one that waits for it.</summary>
/// <param name="First">The sign-off of the step.</param>
/// <param name="Signer">Who signed it last.</param>
/// <param name="Answered">Somebody countersigned it.</param>
/// <param name="Learnt">The trainee has the right to record by now.</param>
/// <param name="Granted">What was asked last was granted.</param>
/// <param name="Next">The step after it is signed.</param>
internal readonly record struct TaughtStep(Signature First, Hand Signer, bool Answered, bool Learnt, bool Next, bool Granted)
{
    public static readonly Hand[] Hands = [Hand.Trainee, Hand.Mate];

    public bool May(Hand hand) => hand == Hand.Mate || Learnt;

    public TaughtStep Sign(Hand hand) => First == Signature.Whole || (First == Signature.Learner && !May(hand))
        ? this with { Granted = false }
        : this with { First = May(hand) ? Signature.Whole : Signature.Learner, Signer = hand, Answered = false, Next = false, Granted = true };

    public TaughtStep Countersign(Hand hand) => First != Signature.Learner || !May(hand) || hand == Signer
        ? this with { Granted = false }
        : this with { First = Signature.Whole, Answered = true, Granted = true };

    public TaughtStep GoOn() => this with { Next = Next || First == Signature.Whole, Granted = !Next && First == Signature.Whole };

    public TaughtStep TakeBack() => this with { First = Signature.Void, Answered = false, Next = false, Granted = true };
}
