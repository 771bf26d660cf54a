namespace ShopJobs.Domain.Tests.Specification.Holds;

/// <summary>How far one hold has come.</summary>
internal enum Hold
{
    None,
    Standing,

    /// <summary>Not decided, and the position was opened since.</summary>
    StandingOpened,

    /// <summary>Decided, and not carried out: to be opened and redone.</summary>
    Rework,

    /// <summary>Decided, and not carried out: new hardware is to be recorded.</summary>
    Replace,
}

/// <summary>The pull of the nut since it was last opened.</summary>
internal enum Pulled
{
    No,
    Good,
    Over,

    /// <summary>Over, and used as is.</summary>
    Used,

    /// <summary>Over, and its record voided.</summary>
    Voided,
}

/// <summary>What the doer said about his pull, and nobody has confirmed.</summary>
internal enum Said
{
    Nothing,

    /// <summary>The number was a slip of typing and was in order.</summary>
    Slip,

    /// <summary>The second report was of the same pull.</summary>
    SamePull,
}

/// <summary>
/// A nut that rides on a stud, with the holds of each. <c>New</c>: new hardware was recorded since the nut's first hold.
/// <c>Counts</c>: what the book says of the nut.
/// </summary>
internal sealed record HeldState(
    bool HandTight, Pulled Pulled, Hold Over, Hold Twin, Hold Pressed, Hold Stud, bool New, Said Said, bool Counts)
{
    public static readonly HeldState Open = new(false, Pulled.No, Hold.None, Hold.None, Hold.None, Hold.None, false, Said.Nothing, false);

    public bool IsHeld => Over != Hold.None || Twin != Hold.None || Pressed != Hold.None;

    public bool IsUndecided => IsUndecidedHold(Over) || IsUndecidedHold(Twin) || IsUndecidedHold(Pressed);

    public HeldState Told() => this with { Counts = HandTight && (Pulled is Pulled.Good or Pulled.Used) && !IsHeld && Stud == Hold.None && Said != Said.SamePull };

    /// <summary>The same with each hold of the nut changed.</summary>
    public HeldState Each(Func<Hold, Hold> change) => this with { Over = change(Over), Twin = change(Twin), Pressed = change(Pressed) };

    public static bool IsUndecidedHold(Hold hold) => hold is Hold.Standing or Hold.StandingOpened;
}
