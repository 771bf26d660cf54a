namespace ShopJobs.Domain.Procedures;

/// <summary>How many positions a joint has on one car, where that is not what the register says.</summary>
/// <param name="Key">Key of its kind.</param>
/// <param name="Place">Its place.</param>
/// <param name="Positions">From 0 to <see cref="Most"/>; 0 where the car has no such joint there.</param>
public readonly record struct JointCount(string Key, string Place, int Positions)
{
    /// <summary>The most positions one joint may have.</summary>
    public const int Most = 100;
}

/// <summary>Which joints one car has: the kind of car whose list in the register it follows, and its own counts.</summary>
/// <param name="Follows"><see cref="Base"/>, <see cref="None"/>, or a key of <see cref="JointRegister.Cars"/>.</param>
/// <param name="Counts">Joints of which this car has another number of positions.</param>
public sealed record JointList(string Follows, IReadOnlyList<JointCount> Counts)
{
    /// <summary>The register's own list, without what differs for a kind of car.</summary>
    public const string Base = "base";

    /// <summary>No list at all: nothing is known of the car's joints.</summary>
    public const string None = "none";

    /// <summary>What every car follows until somebody says otherwise.</summary>
    public static readonly JointList OfTheRegister = new(Base, []);

    /// <summary>With another kind of car, or other counts of these joints. Following another kind of car ends the counts of before.</summary>
    public JointList With(string? follows, IReadOnlyList<JointCount> counts)
    {
        var kept = follows is null ? Counts.Where(own => !counts.Any(count => (count.Key, count.Place) == (own.Key, own.Place))) : [];
        return new JointList(follows ?? Follows, [.. kept, .. counts]);
    }

    public bool Equals(JointList? other) => other is not null && Follows == other.Follows && Counts.SequenceEqual(other.Counts);

    public override int GetHashCode() => HashCode.Combine(Follows, Counts.Count);
}

/// <summary>A kind of car in the register.</summary>
/// <param name="Key">Its key, such as <c>four-stud</c>.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Kinds">Its joint kinds by key: those of the base as they are on it, without what it lacks, with what it has beside.</param>
public sealed record CarKind(string Key, string Name, IReadOnlyDictionary<string, JointKind> Kinds);
