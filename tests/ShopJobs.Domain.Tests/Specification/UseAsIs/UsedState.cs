namespace ShopJobs.Domain.Tests.Specification.UseAsIs;

/// <summary>A piece of evidence that a final record may fail, or another reason why the nut is held.</summary>
[Flags]
internal enum Piece
{
    None = 0,

    /// <summary>Its value is over the maximum.</summary>
    Value = 1,

    /// <summary>Its tool was past its calibration.</summary>
    Tool = 2,

    /// <summary>A lower stage was missing.</summary>
    Stage = 4,

    /// <summary>It was pulled a second time.</summary>
    Second = 8,

    /// <summary>Somebody pressed HOLD.</summary>
    Pressed = 16,

    /// <summary>Whatever held it, it was opened since.</summary>
    Opened = 32,

    /// <summary>Decided: to be opened and redone.</summary>
    Redo = 64,

    /// <summary>A record of a lower stage fails.</summary>
    Lower = 128,

    Evidence = Value | Tool | Stage | Second,
}

/// <summary>
/// A class A nut of two stages, the second witnessed. <c>Lacks</c>: what its final record fails; <c>Accepted</c>: what was used as
/// is; <c>Counts</c>: what the book says.
/// </summary>
internal sealed record UsedState(
    bool HandTight, bool Snug, bool Final, Piece Lacks, Piece Accepted, Piece Holds, bool Witnessed, bool Counts)
{
    public static readonly UsedState Open = new(false, false, false, Piece.None, Piece.None, Piece.None, false, false);

    /// <summary>Held until somebody decides.</summary>
    public bool IsUndecided => (Holds & ~Piece.Redo) != Piece.None;

    /// <summary>Its final record meets its evidence, or what it fails was used as is.</summary>
    public bool Meets => Final && (Lacks & ~Accepted) == Piece.None;

    /// <summary>The same with what the book says.</summary>
    public UsedState Told() => this with { Counts = HandTight && Meets && Witnessed && Holds == Piece.None };
}
