using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>The marks held, doubted and due lie over a state; drawings show the state beneath too.</summary>
public static class PositionMarks
{
    /// <summary>The state of a position as if nothing held it, no tool were in doubt and no re-torque were due.</summary>
    public static PositionState StateUnderMarks(this CarState state, JointPosition position)
    {
        ArgumentNullException.ThrowIfNull(state);
        var bare = state with { Positions = state.Positions.SetItem(position, state.Of(position) with { Holds = [] }) };
        return bare.StateOf(position, _ => ToolState.Empty) is var found and not PositionState.Due ? found : PositionState.AtTorque;
    }
}
