namespace ShopJobs.Domain.Tests.Specification.Conditions;

/// <summary>How the wheel of a place is declared to stand.</summary>
internal enum Wheel
{
    NotSaid,
    Up,
    Down,
}

/// <summary>The nut of a place.</summary>
internal enum Nut
{
    Open,
    HandTight,
    Good,
    Failed,
}

/// <summary>Which declarations the nut's record keeps.</summary>
internal enum Keeps
{
    Nothing,

    /// <summary>The numbers of those that stand.</summary>
    Standing,

    /// <summary>A number that has ended or was said again since.</summary>
    Earlier,
}

/// <summary>One place of the car: its own aspect, its nut, and what the nut's record rested on.</summary>
internal readonly record struct Place(Wheel Wheel, Nut Nut, Keeps Keeps)
{
    /// <summary>The declaration that its record kept has ended.</summary>
    public Place Ended() => this with { Keeps = Keeps == Keeps.Standing ? Keeps.Earlier : Keeps };
}

/// <summary>Two places of a car, and an aspect of the whole car: the engine is cold.</summary>
internal sealed record ConditionState(Place Left, Place Right, bool Cold)
{
    public static readonly ConditionState NothingSaid = new(default, default, false);

    public Place this[Corner corner] => corner == Corner.Left ? Left : Right;

    public ConditionState With(Corner corner, Place place) => corner == Corner.Left ? this with { Left = place } : this with { Right = place };

    public ConditionState Each(Func<Place, Place> change) => this with { Left = change(Left), Right = change(Right) };
}

/// <summary>A place of the car.</summary>
internal enum Corner
{
    Left,
    Right,
}
