using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Step;

/// <summary>A joint that a step takes apart, and how much of it is open.</summary>
public sealed record StepJoint(string Name, string Place, IReadOnlyList<JointPosition> Positions, int Open, bool IsBare)
{
    /// <summary>True for the same joint, however much of it is open.</summary>
    public bool IsSame(StepJoint? other) => other is not null && (Name, Place) == (other.Name, other.Place);

    /// <summary>Every joint that the step takes apart, in the order of its procedure.</summary>
    public static IReadOnlyList<StepJoint> OpenedBy(StepScene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        return
        [
            .. from key in scene.Step.Step.Opens
               let kind = scene.Placed.Register.Kinds[key]
               from place in kind.Places.Where(place => scene.Step.Place is null ? scene.Job.Fact.Places.Contains(place) : place == scene.Step.Place)
               let positions = Enumerable.Range(1, kind.PositionsAt(place)).Select(new Joint(key, place).At).ToList()
               let books = positions.ConvertAll(scene.State.Of)
               select new StepJoint(kind.Name, place, positions, books.Count(book => book.OpenedBy >= scene.Job.Number || book.IsBare), books.TrueForAll(book => book.IsBare)),
        ];
    }
}
