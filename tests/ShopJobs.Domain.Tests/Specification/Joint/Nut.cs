namespace ShopJobs.Domain.Tests.Specification.Joint;

/// <summary>How a nut sits, by the book.</summary>
internal enum Sits
{
    AsFound,
    Open,
    HandTight,
}

/// <summary>The record of one stage on one nut since the joint was last opened.</summary>
internal enum Record
{
    None,
    Good,

    /// <summary>Pulled, and it doesn't count.</summary>
    Failed,
}

/// <summary>What stops a nut.</summary>
internal enum Stop
{
    None,

    /// <summary>To be backed off before anything else.</summary>
    BackOff,

    /// <summary>A pull was voided and may have been pulled: a second person is asked.</summary>
    Asked,

    /// <summary>Held until somebody with the right decides.</summary>
    Held,

    /// <summary>Held, and opened since.</summary>
    HeldOpened,
}

/// <summary>One of the two nuts. <c>Twice</c> is not in the book: the same stage was clicked twice since the nut was opened.</summary>
internal readonly record struct Nut(Sits Sits, Record Snug, Record Final, Stop Stop, bool Twice)
{
    public bool IsHeld => Stop is Stop.Held or Stop.HeldOpened;

    /// <summary>The book says: at torque.</summary>
    public bool Counts => Final == Record.Good && Stop == Stop.None;

    public bool IsPulled => Snug != Record.None || Final != Record.None;

    public Record At(Stage stage) => stage == Stage.Snug ? Snug : Final;

    public Nut With(Stage stage, Record record) => stage == Stage.Snug ? this with { Snug = record } : this with { Final = record };

    /// <summary>Held from now on, not opened since.</summary>
    public Nut Hold() => this with { Stop = Stop.Held };
}
