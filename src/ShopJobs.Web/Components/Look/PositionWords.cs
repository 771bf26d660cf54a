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
}
