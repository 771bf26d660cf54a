using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Waits;

/// <summary>What lies between a step and the one before it.</summary>
internal enum Between
{
    Nothing,
    Witness,
    Cure,
    Result,
    AnotherPlace,
}

/// <summary>How the second step depends on the first, and whether it brings a class A joint to its final stage.</summary>
internal readonly record struct Plan(Between Between, bool ClassAFinal)
{
    public static readonly Plan[] All = [.. from between in Enum.GetValues<Between>() from final in (bool[])[false, true] select new Plan(between, final)];

    public override string ToString() => $"{Between}{(ClassAFinal ? ", class A final" : "")}";
}

/// <summary>Two steps; the second waits for the first.</summary>
/// <param name="Who">Whose session it is.</param>
/// <param name="FirstBy">Who completed the first step.</param>
/// <param name="InSession">It is still the session in which that was.</param>
/// <param name="Second">The second step's work is done.</param>
/// <param name="Counts">It counts.</param>
internal readonly record struct TwoSteps(
    Plan Plan, People Who, People FirstBy, bool InSession, bool FirstSigned, bool Second, bool Counts, bool BothSigned, bool Refused)
{
    public static readonly TwoSteps Start = new() { Who = People.Ann };

    public bool SameHand => FirstBy == Who && InSession;

    public bool Flows => FirstBy != People.Nobody && (FirstSigned || (SameHand && Plan.Between == Between.Nothing));

    public TwoSteps Finish(Plan plan) => this with { Plan = plan, FirstBy = Who, InSession = true };

    public TwoSteps TakeOver(People person) => this with { Who = person, InSession = false, Refused = false };

    public TwoSteps Pull() => this with { Second = true, Counts = Flows, Refused = false };

    public TwoSteps SignTogether() => Plan.ClassAFinal || !Counts
        ? this with { Refused = true }
        : this with { BothSigned = true, FirstSigned = true, Refused = false };
}
