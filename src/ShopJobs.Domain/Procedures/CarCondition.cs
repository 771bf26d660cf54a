namespace ShopJobs.Domain.Procedures;

/// <summary>
/// One aspect of the car that a stage may ask for, such as <c>stand = wheel-up</c> or <c>hub = held</c>.
/// The aspects and their values are listed in the joint register.
/// </summary>
public readonly record struct CarCondition(string Aspect, string Value)
{
    public override string ToString() => $"{Aspect}: {Value}";
}
