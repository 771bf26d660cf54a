using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

// The figures that are typed.
internal static partial class Choices
{
    public static EnteredTorque Value(CarAtWork car, Move move, RecordTorque? pull = null)
    {
        var target = pull is null ? (car.Book.FindLast(line => line.Entry is TorqueRecorded)?.Entry as TorqueRecorded)?.Position : pull.Position;
        var group = target is { } at ? Opening.GroupOn(car.State, car.As(TestPerson.Lee), at)?.Group : null;
        var stage = group?.Stages[Math.Min(group.Stages.Count, pull?.Stage ?? 1 + (move.C % 2)) - 1] ?? TestProcedures.Stage(1, 50, 40, 60, [1]);
        var runDown = pull?.RunDown ?? (target is { } on ? car.State.Of(on).RunDownOf() : null);
        var atFastener = (move.B / 3 % 9) switch
        {
            0 => stage.Permitted.Minimum.Value,
            1 => stage.Permitted.Maximum.Value,
            2 => stage.Permitted.Minimum.Value - 0.1m,
            3 => stage.Permitted.Maximum.Value + 0.1m,
            4 => stage.Permitted.Minimum.Value - 10,
            5 => stage.Permitted.Maximum.Value + 10,
            6 => stage.Value.Value + 0.5m,
            7 => stage.Value.Value - 0.51m,
            _ => stage.Value.Value,
        };
        return OnTool(group, CarAtWork.NewtonMetres(atFastener), runDown, pull is null ? null : car.Tool(pull.Tool).Tool);
    }

    /// <summary>An angle at the ends of what is permitted, just outside and far off.</summary>
    public static decimal Angle(CarAtWork car, Move move, RecordTorque pull)
    {
        var turn = car.Placed(pull.Job).Group(pull.Group, pull.Position.Place)!.Group.Stages[pull.Stage - 1].Turn!;
        return (move.B / 3 % 6) switch
        {
            0 => turn.Minimum,
            1 => turn.Maximum,
            2 => turn.Minimum - 0.1m,
            3 => turn.Maximum + 0.1m,
            4 => 0,
            _ => turn.Maximum + 90,
        };
    }

    /// <summary>What stands on the tool where a stage is done as asked; null where an angle is asked.</summary>
    public static EnteredTorque? Asked(JointGroup group, Stage stage, EnteredTorque? runDown, TorqueTool? tool) =>
        stage.Turn is null ? OnTool(group, stage.Value, runDown, tool) : null;

    /// <summary>What stands on the tool for a torque at the fastener.</summary>
    public static EnteredTorque OnTool(JointGroup? group, EnteredTorque atFastener, EnteredTorque? runDown, TorqueTool? tool) =>
        group?.SettingFor(TestProcedures.Stage(1, atFastener.Value, 0, 1000, [1]), runDown, tool) ?? atFastener;

    /// <summary>A run-down torque, where the group adds one and none stands on the position yet.</summary>
    public static EnteredTorque? TurnedDown(CarAtWork car, JointGroup group, JointPosition position, int number) =>
        group.RunDown == RunDown.Add && (car.State.Of(position).RunDownOf() is null || number % 5 == 0)
            ? CarAtWork.NewtonMetres((number % 4) switch { 0 => 2, 1 => 10, _ => 4.5m })
            : null;
}
