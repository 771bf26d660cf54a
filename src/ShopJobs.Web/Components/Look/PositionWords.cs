using System.Globalization;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Look;

/// <summary>The shop's word for each state; a drawing never stands without it.</summary>
public static class PositionWords
{
    /// <summary>The word for a state; a staged position says how far, e.g. "staged 1/2".</summary>
    public static string Of(PositionState state, int stage = 0, int stages = 0) => state switch
    {
        PositionState.Held => "held",
        PositionState.Doubted => "doubted",
        PositionState.Open => "open",
        PositionState.NotFitted => "not fitted",
        PositionState.HandTight => "hand-tight",
        PositionState.Staged when stages > 0 => string.Create(CultureInfo.InvariantCulture, $"staged {stage}/{stages}"),
        PositionState.Staged => "staged",
        PositionState.AsFound => "as found",
        PositionState.Due => "due",
        PositionState.AtTorque => "at torque",
        PositionState.Checked => "checked",
        PositionState.Settled => "settled",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Not a state of a position."),
    };

    /// <summary>What a state means, for whoever does not know the shop's word.</summary>
    public static string Meaning(PositionState state) => state switch
    {
        PositionState.Held => "stopped until somebody decides",
        PositionState.Doubted => "the tool it was tightened with is in doubt",
        PositionState.Open => "taken apart",
        PositionState.NotFitted => "new part in place, not run down yet",
        PositionState.HandTight => "run down by hand only",
        PositionState.Staged => "tightened part of the way",
        PositionState.AsFound => "as the car came in, not checked by us",
        PositionState.Due => "at torque, to be tightened again after the drive",
        PositionState.AtTorque => "tightened to its final torque",
        PositionState.Checked => "at torque, and checked by a second person",
        PositionState.Settled => "tightened again after the drive",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "Not a state of a position."),
    };
}
