using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>How a joint or one position of it is drawn and said.</summary>
/// <param name="Stage">Stages done, where it is staged.</param>
/// <param name="Stages">Stages in all.</param>
/// <param name="Word">The shop's word, with how many where not all are so.</param>
public sealed record JointLook(Joint Joint, PositionState State, int Stage, int Stages, string Word)
{
    /// <summary>A joint, by the worst of its fasteners that somebody here has touched.</summary>
    public static JointLook Of(CarReading reading, JointSeen joint)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(joint);
        var shown = joint.Shown;
        var same = joint.Fasteners.Count(fastener => fastener.State == shown.State);
        var one = Of(reading, joint.Joint.At(shown.Number));
        return same == joint.Fasteners.Count
            ? one
            : one with { Word = string.Create(CultureInfo.InvariantCulture, $"{same} of {joint.Fasteners.Count} {one.Word}") };
    }

    /// <summary>One position.</summary>
    public static JointLook Of(CarReading reading, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var state = reading.StateOf(position);
        var (done, of) = reading.State.StagesOf(reading.State.Of(position));
        var word = PositionWords.Of(state, done, of);
        var awaits = state is PositionState.AtTorque or PositionState.Staged && AwaitsWitness(reading.State, position);
        return new JointLook(position.Joint, state, done, of, awaits ? $"{word}, to witness" : word);
    }

    private static bool AwaitsWitness(CarState state, JointPosition position)
    {
        var book = state.Of(position);
        return Enumerable.Range(1, state.StagesOf(book).Done).Any(stage => !book.IsWitnessed(stage));
    }
}
