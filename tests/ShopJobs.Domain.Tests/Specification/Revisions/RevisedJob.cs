namespace ShopJobs.Domain.Tests.Specification.Revisions;

/// <summary>The revisions of a procedure: the first; one that says the same in better words; one with another torque; one without the nut.</summary>
internal enum Revised
{
    First,
    SameAgain,
    OtherTorque,
    WithoutIt,
}

/// <summary>Whether the nut waits for somebody.</summary>
internal enum RevisedHold
{
    None,

    /// <summary>For a decision.</summary>
    Waits,

    /// <summary>To be backed off, as it was decided.</summary>
    ToRedo,
}

/// <summary>A running job of one nut, whose procedure is revised.</summary>
/// <param name="By">The revision the job is done by.</param>
/// <param name="Made">The revision whose torque the nut was pulled to; null while it was not pulled since it was opened.</param>
/// <param name="Signed">The step of its torque is signed, and the sign-off stands.</param>
/// <param name="Used">What is outside the revision was decided use as is.</param>
/// <param name="Granted">What was asked last was granted.</param>
internal readonly record struct RevisedJob(Revised By, Revised? Made, bool Signed, RevisedHold Hold, bool Used, bool Granted)
{
    public static readonly Revised[] Revisions = Enum.GetValues<Revised>();

    /// <summary>The nut counts by the revision that the job is done by.</summary>
    public bool Counts => Hold == RevisedHold.None && Made is { } made && (Used || AreAlike(made, By));

    /// <summary>What two revisions ask of the nut is the same.</summary>
    public static bool AreAlike(Revised one, Revised other) => one == other || (one != Revised.OtherTorque && other != Revised.OtherTorque);

    public RevisedJob Pull() => this with { Made = By, Used = false, Granted = true };

    public RevisedJob Open() => this with { Made = null, Signed = false, Used = false, Hold = Hold == RevisedHold.ToRedo ? RevisedHold.None : Hold, Granted = true };

    public RevisedJob Sign() => Counts && !Signed ? this with { Signed = true, Granted = true } : Refused();

    public RevisedJob Adopt(Revised revision) => revision == By || (revision == Revised.WithoutIt && Made is not null) ? Refused() : this with
    {
        By = revision,
        Hold = Hold == RevisedHold.None && !AreAlike(By, revision) && Made is { } made && !AreAlike(made, revision) ? RevisedHold.Waits : Hold,
        Used = Used && AreAlike(By, revision),
        Signed = Signed && AreAlike(By, revision),
        Granted = true,
    };

    public RevisedJob Decide(bool use) => Hold != RevisedHold.Waits ? Refused() : this with
    {
        Hold = use || Made is null ? RevisedHold.None : RevisedHold.ToRedo,
        Used = use && Made is not null,
        Granted = true,
    };

    public RevisedJob Refused() => this with { Granted = false };
}
