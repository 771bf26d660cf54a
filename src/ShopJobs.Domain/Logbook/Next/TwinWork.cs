using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>
/// The same dangerous joint at the other side of the car, done by the same person: a mistake made once is made twice, so somebody looks
/// between (EASA AMC M.A.402(g): different people on twin tasks where possible).
/// </summary>
public static class TwinWork
{
    private const string Left = "left", Right = "right";

    /// <summary>The joint at the other side; null where the place has none.</summary>
    public static Joint? TwinOf(Joint joint) =>
        joint.Place.EndsWith(Left, StringComparison.Ordinal) ? joint with { Place = joint.Place[..^Left.Length] + Right }
        : joint.Place.EndsWith(Right, StringComparison.Ordinal) ? joint with { Place = joint.Place[..^Right.Length] + Left }
        : null;

    /// <summary>
    /// Class A joints at the other side of this step's that this person pulled, and at which nobody has looked since: for whoever is about to
    /// do this side too.
    /// </summary>
    public static IReadOnlyList<Joint> Before(CarState state, StepInstance step, PersonId person)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(step);
        return
        [
            .. from work in step.Work
               where work.Instance.Group is { Risk: RiskClass.A, Temporary: false }
               let twin = TwinOf(work.Instance.Joint)
               where twin is not null && IsPulledAndUnseen(state, twin.Value, person)
               select twin.Value,
        ];
    }

    private static bool IsPulledAndUnseen(CarState state, Joint joint, PersonId person) =>
        state.Positions.Values.Where(book => book.Position.Joint == joint && book.Last is not null).ToList() is { Count: > 0 } pulled
        && pulled.Exists(book => book.Last!.Person == person || book.Last.Fact.Helpers.Contains(person))
        && pulled.Exists(book => book.Last!.WitnessedBy is null);
}
