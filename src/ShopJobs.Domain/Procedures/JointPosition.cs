namespace ShopJobs.Domain.Procedures;

/// <summary>One joint of a car: a key of the joint register at a place, such as <c>wheel.nut</c> at <c>front-left</c>.</summary>
public readonly record struct Joint(string Key, string Place)
{
    /// <summary>The position with this number, counted from 1.</summary>
    public JointPosition At(int number) => new(Key, Place, number);

    public override string ToString() => $"{Key} {Place}";
}

/// <summary>One fastener of a joint; numbers count from 1. It belongs to the car, never to a job.</summary>
public readonly record struct JointPosition(string Key, string Place, int Number)
{
    /// <summary>The joint this fastener is part of.</summary>
    public Joint Joint => new(Key, Place);

    public override string ToString() => $"{Key} {Place} {Number}";
}
