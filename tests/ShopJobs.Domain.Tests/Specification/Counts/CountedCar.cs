using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Counts;

/// <summary>A car whose register says how many positions a joint has: the second of two is in question.</summary>
/// <param name="Register">The register has joints at all.</param>
/// <param name="Count">Positions by the register.</param>
/// <param name="Ever">The fact: the second position was ever opened, fitted or held.</param>
/// <param name="Good">The second position counts.</param>
/// <param name="LoweredBy">The lead who asks for one position less, not confirmed yet.</param>
/// <param name="Refused">What was asked last was refused.</param>
/// <param name="Visits">Positions that the procedure visits which runs on the car; 0 where none runs.</param>
internal readonly record struct CountedCar(bool Register, int Count, bool Ever, bool Good, int Visits, People LoweredBy, bool Released, bool Refused)
{
    public static readonly CountedCar Start = new() { Register = true, Count = 2 };

    public bool JobRuns => Visits > 0;

    public bool InTheAnd => Count == 2 || Ever;

    public bool Could => Register && (!InTheAnd || !Ever || Good);

    public CountedCar Touch() => Told() with { Ever = true, Good = false };

    public CountedCar Tighten() => Told() with { Good = true };

    public CountedCar Lower() => JobRuns ? Told() with { Refused = true } : Told() with { LoweredBy = People.Ann };

    public CountedCar Look(People person) => person == LoweredBy
        ? Told() with { Refused = true }
        : Told() with { LoweredBy = People.Nobody, Count = 1 };

    public CountedCar Keep() => Told() with { LoweredBy = People.Nobody };

    public CountedCar Add() => Told() with { Count = 2 };

    public CountedCar Begin(int visits) => Count == visits ? Told() with { Visits = visits } : Told() with { Refused = true };

    public CountedCar End() => Told() with { Visits = 0 };

    public CountedCar Ask() => Told() with { Released = Could, Refused = !Could };

    public CountedCar Empty() => Told() with { Register = false };

    public CountedCar Write() => Told() with { Register = true };

    private CountedCar Told() => this with { Released = false, Refused = false };
}
