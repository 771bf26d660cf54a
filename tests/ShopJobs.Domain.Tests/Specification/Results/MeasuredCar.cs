namespace ShopJobs.Domain.Tests.Specification.Results;

/// <summary>What the newest record of the weights amounts to.</summary>
internal enum Record
{
    None,
    Good,

    /// <summary>Measured outside its limits, or with scales that were out of use.</summary>
    NoGood,
    Void,
}

/// <summary>What is wrong with the scales.</summary>
internal enum Scales
{
    Good,
    OutOfUse,
}

/// <summary>A car whose corner weights depend on one joint and are measured with the scales.</summary>
/// <param name="Undone">The weights are to be measured: the joint was opened, or what was measured is no good.</param>
/// <param name="Covered">The record is from before the doubt that stands.</param>
/// <param name="Taken">Whether what was asked last was recorded.</param>
/// <param name="MayRoll">May be rolled by hand: the register wants the weights for that too.</param>
internal readonly record struct MeasuredCar(bool JointOpen, Record Weights, bool Undone, Scales Scales, bool InDoubt, bool Covered, bool? Taken, bool MayRoll)
{
    public static readonly MeasuredCar AsItCame = default(MeasuredCar).Told();

    /// <summary>The same car, with what it is told about rolling.</summary>
    public MeasuredCar Told() => this with { MayRoll = MayGo };

    /// <summary>A good result, with nothing in doubt about it.</summary>
    public bool Stands => Weights == Record.Good && !Covered;

    /// <summary>May go on the road, as far as the weights are concerned.</summary>
    public bool MayGo => !JointOpen && !Undone && !Covered;

    public MeasuredCar Measure(bool inside) => JointOpen
        ? this with { Taken = false }
        : (inside && Scales == Scales.Good
            ? this with { Weights = Record.Good, Undone = false }
            : this with { Weights = Record.NoGood, Undone = true }) with
        { Covered = false, Taken = true };

    public MeasuredCar WithoutScales() => this with { Taken = false };

    public MeasuredCar Open() => this with { JointOpen = true, Undone = true, Weights = Weights == Record.None ? Record.None : Record.Void, Covered = false, Taken = null };

    public MeasuredCar Close() => this with { JointOpen = false, Taken = null };

    public MeasuredCar Doubt() => this with { Scales = Scales.OutOfUse, InDoubt = true, Covered = Weights == Record.Good, Taken = null };

    public MeasuredCar Clear() => this with { Scales = Scales.Good, InDoubt = false, Covered = false, Taken = null };
}
