namespace ShopJobs.Domain.Tests.Specification.Shown;

/// <summary>What is about to be signed on the screen.</summary>
internal enum Dialog
{
    None,
    SignOff,
    Witness,
    Decision,
    Release,
}

/// <summary>What happened on another tablet since the dialog was shown.</summary>
[Flags]
internal enum Since
{
    Nothing = 0,
    PulledAgain = 1,
    HeldToo = 2,
    TypedAnew = 4,
    Elsewhere = 8,
}

/// <summary>A dialog that stands open while others work on the same car.</summary>
/// <param name="Signed">What was signed last.</param>
/// <param name="Unshown">The signature covers something that was not on the screen.</param>
/// <param name="Kept">The lines that were shown are kept with the signature.</param>
/// <param name="LookAgain">The signature was refused with these words.</param>
internal readonly record struct OpenDialog(Dialog Dialog, Since Since, Dialog Signed, bool Unshown, bool Kept, bool LookAgain)
{
    public static readonly Dialog[] Kinds = [Dialog.SignOff, Dialog.Witness, Dialog.Decision, Dialog.Release];

    public static readonly Since[] Changes = [Since.PulledAgain, Since.HeldToo, Since.TypedAnew, Since.Elsewhere];

    /// <summary>True where the entries that were shown are no longer exactly those.</summary>
    public bool Moved => (Since & (Dialog switch
    {
        Dialog.SignOff or Dialog.Witness => Since.PulledAgain,
        Dialog.Decision => Since.HeldToo,
        _ => Since.PulledAgain | Since.HeldToo | Since.Elsewhere,
    })) != 0;

    public static OpenDialog Shown(Dialog dialog) => new(dialog, Since.Nothing, Dialog.None, false, false, false);

    public OpenDialog Meanwhile(Since change) => this with { Since = Since | change };

    public OpenDialog Pin() => Moved
        ? new OpenDialog { LookAgain = true }
        : new OpenDialog { Signed = Dialog, Kept = true };
}
