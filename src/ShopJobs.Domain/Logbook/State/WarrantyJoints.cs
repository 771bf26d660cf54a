using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>What a warranty case of a car can be about: joints the shop tightened, with the records that stand on them.</summary>
public static class WarrantyJoints
{
    /// <summary>Joints with a record of their final stage, in order of their names.</summary>
    public static IReadOnlyList<Joint> JointsWithRecords(this CarState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Positions.Values.Where(book => Final(book).Any()).Select(book => book.Position.Joint).Distinct().OrderBy(joint => joint.ToString(), StringComparer.Ordinal)];
    }

    /// <summary>Numbers of the newest records of the final stage on a joint, in order; empty where there are none.</summary>
    public static IReadOnlyList<long> RecordsOf(this CarState state, Joint joint)
    {
        ArgumentNullException.ThrowIfNull(state);
        return [.. state.Positions.Values.Where(book => book.Position.Joint == joint).SelectMany(Final).Select(pull => pull.Number).Order()];
    }

    private static IEnumerable<Pull> Final(PositionBook book) => book.Last is { } last ? book.Newest(last.Fact.Spec.Stages) : [];
}
