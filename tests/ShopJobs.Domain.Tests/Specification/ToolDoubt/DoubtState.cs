namespace ShopJobs.Domain.Tests.Specification.ToolDoubt;

/// <summary>The wrench.</summary>
internal enum Wrench
{
    Good,

    /// <summary>Past the day of its calibration.</summary>
    Overdue,
    OutOfUse,
}

/// <summary>What put the wrench in doubt.</summary>
internal enum Doubt
{
    None,

    /// <summary>Somebody said so: it was dropped, overloaded, lent.</summary>
    ByHand,

    /// <summary>Its readings as found.</summary>
    ByReadings,
}

/// <summary>What was done with the wrench since the doubt.</summary>
internal enum Since
{
    Nothing,

    /// <summary>Its readings as found were good, before any adjustment.</summary>
    FoundGood,
    Adjusted,
}

/// <summary>What a position stands on.</summary>
internal enum Stands
{
    Nowhere,

    /// <summary>Pulled with the second wrench.</summary>
    OnTheOther,

    /// <summary>Pulled with the wrench since its last good readings as left, or through a pair that was.</summary>
    OnIt,

    /// <summary>The same, before its last good readings as left.</summary>
    OnItBefore,

    /// <summary>In doubt.</summary>
    InDoubt,

    /// <summary>In doubt, and the wrench has had good readings as left since.</summary>
    InDoubtBefore,

    /// <summary>Pulled, and it doesn't count.</summary>
    Failed,
}

/// <summary>
/// A wrench in doubt, a nut, and a stud driven by the second wrench through a pair. <c>Signed</c>: the nut's step is signed;
/// <c>SignatureStands</c> is what the book says of it.
/// </summary>
internal sealed record DoubtState(
    Wrench Wrench, Doubt Doubt, Since Since, Stands Nut, Stands Pair, Stands Stud, bool Signed, bool SignatureStands)
{
    public static readonly DoubtState AtFirst = new(Wrench.Good, Doubt.None, Since.Nothing, Stands.Nowhere, Stands.Nowhere, Stands.Nowhere, false, false);

    public static bool IsDoubted(Stands position) => position is Stands.InDoubt or Stands.InDoubtBefore;

    public static bool Counts(Stands position) => position is Stands.OnTheOther or Stands.OnIt or Stands.OnItBefore;

    /// <summary>The same with each position changed.</summary>
    public DoubtState Each(Func<Stands, Stands> change) => this with { Nut = change(Nut), Pair = change(Pair), Stud = change(Stud) };

    public DoubtState Told() => this with { SignatureStands = Signed && Counts(Nut) };
}
