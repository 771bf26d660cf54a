namespace ShopJobs.Domain.Tests.Specification.Behind;

/// <summary>How one of the two stands.</summary>
internal enum Stands
{
    /// <summary>As the car came.</summary>
    Found,

    /// <summary>Off: a wheel's nut, or a bolt of the brake.</summary>
    Off,

    /// <summary>Put on out of order: it is there, and is neither run down nor off.</summary>
    Put,

    ByHand,
    Tight,

    /// <summary>Pulled out of order, and held until the lead decides.</summary>
    Wrong,
}

/// <summary>A wheel with one nut, and one bolt of the brake behind it.</summary>
internal readonly record struct BehindWheel(Stands Wheel, Stands Bolt)
{
    public bool WheelIsOff => Wheel == Stands.Off;

    public bool BoltIsFinished => Bolt is Stands.Found or Stands.Tight;

    public bool BoltCounts => Bolt == Stands.Tight;

    public bool WheelCounts => Wheel == Stands.Tight && BoltIsFinished;

    public BehindWheel TakeWheelOff() => this with { Wheel = Stands.Off };

    public BehindWheel PutWheelOn() => this with { Wheel = BoltIsFinished ? Stands.ByHand : Stands.Put };

    public BehindWheel TightenWheel() => this with { Wheel = BoltIsFinished ? Stands.Tight : Stands.Wrong };

    public BehindWheel OpenBolt() => this with { Bolt = Stands.Off };

    public BehindWheel RunBoltDown() => this with { Bolt = WheelIsOff ? Stands.ByHand : Stands.Put };

    public BehindWheel TightenBolt() => this with { Bolt = WheelIsOff ? Stands.Tight : Stands.Wrong };
}
