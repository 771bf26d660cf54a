using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What the words of a reason need from the shop: what joints are called, and how its clock shows an instant.</summary>
public sealed record HoldNames(Func<Joint, string> Joint, Func<DateTime, DateTime> OnTheWall)
{
    /// <summary>What a person is called; "somebody" where no names are at hand.</summary>
    public Func<PersonId, string> Person { get; init; } = static _ => "Somebody";

    /// <summary>What the car's odometer counts in.</summary>
    public DistanceUnit Distance { get; init; }

    /// <summary>Where no register is at hand: ids as they are, instants in UTC.</summary>
    public static readonly HoldNames Plain = new(joint => joint.ToString(), at => at);

    /// <summary>What people call a result.</summary>
    public Func<string, string> Result { get; init; } = name => ResultKind.Bare(name).Name;

    /// <summary>By the shop's register and clock.</summary>
    public static HoldNames Of(Circumstances now)
    {
        ArgumentNullException.ThrowIfNull(now);
        return new HoldNames(now.Name, now.OnTheWall) { Result = now.Register.NameOfResult, Distance = now.Distance, Person = now.PersonName };
    }
}
