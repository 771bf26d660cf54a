using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Logbook;

/// <summary>Says before a pull whether a tool may be taken for it, by the same rules that judge the pull.</summary>
public static class ToolChoice
{
    private static readonly HoldReason[] AboutTools =
    [
        HoldReason.ToolUnknown,
        HoldReason.ToolQuarantined,
        HoldReason.ToolOverdue,
        HoldReason.ToolAtItsLimit,
        HoldReason.CalibrationUnknown,
        HoldReason.ToolOutOfRange,
        HoldReason.ToolLengthMissing,
        HoldReason.EvidenceNotAllowed,
    ];

    /// <summary>What a pull with this kind of tool is recorded as: a click tool confirms its setting, any other gives a reading.</summary>
    public static TorqueKind Evidence(this ToolKind kind) => kind == ToolKind.Click ? TorqueKind.SettingConfirmed : TorqueKind.Reading;

    /// <summary>The same for a stage: an angle is read where one is asked for.</summary>
    public static TorqueKind Evidence(this ToolKind kind, Stage stage)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return stage.Turn is null ? kind.Evidence() : TorqueKind.AngleTurned;
    }

    /// <summary>True where a stage takes a record of this kind: an angle where one is asked for, else the setting or reading it asks.</summary>
    public static bool Takes(this Stage stage, TorqueKind record)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return record switch
        {
            TorqueKind.AngleTurned => stage.Turn is not null,
            TorqueKind.SettingConfirmed => stage.Turn is null && stage.Evidence != Procedures.Evidence.Reading,
            TorqueKind.Reading => stage.Turn is null && stage.Evidence != Procedures.Evidence.Setting,
            _ => false,
        };
    }

    /// <summary>True where a tool of this kind gives such a record: a click tool shows nothing, and only one kind measures an angle.</summary>
    public static bool Gives(this ToolKind kind, TorqueKind record) => record switch
    {
        TorqueKind.AngleTurned => kind == ToolKind.Angle,
        TorqueKind.SettingConfirmed => kind != ToolKind.Indicating,
        TorqueKind.Reading => kind != ToolKind.Click,
        _ => false,
    };

    /// <summary>Why this tool cannot do a stage at what it is to be set to; empty when it can.</summary>
    /// <param name="runDown">Run-down torque of the position that is next, where it is added and known.</param>
    public static IReadOnlyList<HoldReason> Against(
        this CarState state, Circumstances now, JobBook job, GroupInstance instance, Stage stage, ToolId tool, EnteredTorque? runDown = null)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(instance);
        ArgumentNullException.ThrowIfNull(stage);
        var position = instance.Joint.At(stage.Visits[0]);
        var question = new PullQuestion(state, now, job, now.Placed(job), instance, state.Of(position))
        {
            Stage = stage,
            Value = stage.Turn is null ? instance.Group.SettingFor(stage, runDown, now.Tool(tool).Tool) : null,
            AngleDegrees = stage.Turn?.Degrees,
            ToolId = tool,
            Kind = (now.Tool(tool).Tool?.Kind ?? ToolKind.Indicating).Evidence(stage),
        };
        return [.. PullRules.Pull.Where(rule => AboutTools.Contains(rule.Reason) && rule.Fails(question)).Select(rule => rule.Reason)];
    }
}
