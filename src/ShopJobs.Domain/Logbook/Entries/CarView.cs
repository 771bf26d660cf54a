namespace ShopJobs.Domain.Logbook;

/// <summary>From where a car is photographed, going round it from the nose over its right side. Right is the car's own right.</summary>
public enum CarView
{
    /// <summary>The nose.</summary>
    Front,

    /// <summary>The corner of nose and right side.</summary>
    FrontRight,

    /// <summary>The right side.</summary>
    Right,

    /// <summary>The corner of tail and right side.</summary>
    RearRight,

    /// <summary>The tail.</summary>
    Rear,

    /// <summary>The corner of tail and left side.</summary>
    RearLeft,

    /// <summary>The left side.</summary>
    Left,

    /// <summary>The corner of nose and left side.</summary>
    FrontLeft,
}
