using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>How a procedure's choices are said on a screen.</summary>
public static class ProcedureWords
{
    /// <summary>The condition of the thread that the torque assumes.</summary>
    public static string Words(this ThreadCondition condition) => condition switch
    {
        ThreadCondition.Dry => "dry",
        ThreadCondition.Oiled => "oiled",
        ThreadCondition.PreAppliedLocker => "pre-applied locker, add none",
        ThreadCondition.Locker => "thread-locker",
        _ => "anti-seize",
    };

    /// <summary>What shows that the pull was made.</summary>
    public static string Words(this Evidence evidence) => evidence switch
    {
        Evidence.Setting => "clicked at the setting",
        Evidence.Reading => "reading",
        _ => "clicked at the setting or read",
    };

    /// <summary>The kind of tool that a stage asks for.</summary>
    public static string ToolFor(Stage stage)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return (stage.Turn, stage.Evidence) switch
        {
            ({ }, _) => "one that reads the angle",
            (_, Evidence.Setting) => "click wrench",
            (_, Evidence.Reading) => "one that reads the torque",
            _ => "click wrench, or one that reads",
        };
    }

    /// <summary>Risk class with its meaning.</summary>
    public static string Words(this RiskClass risk) => risk switch
    {
        RiskClass.A => "class A, danger to life",
        RiskClass.B => "class B, function",
        _ => "class C, nuisance",
    };

    /// <summary>The re-torque after the first drive.</summary>
    public static string Words(this ReTorque? rule) => rule switch
    {
        null => "none asked",
        { Forbidden: true } => "forbidden: only looked at",
        _ => FormattableString.Invariant($"between {rule.AfterKm} and {rule.BeforeKm} km, within {rule.WithinDays} days"),
    };

    /// <summary>"Torque it to its final stage within 30 minutes of hand-tight; later is held."; empty where no time is stated.</summary>
    public static string WithinWords(this JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return group.Within is { } within ? $"Final stage within {Words(within)} of hand-tight; a later pull is recorded, does not count and is held." : "";
    }

    private static string Words(TimeSpan time) => time switch
    {
        { TotalMinutes: 1 } => "1 minute",
        { TotalHours: 1 } => "1 hour",
        _ when time.Minutes == 0 && time.Seconds == 0 => FormattableString.Invariant($"{time.TotalHours:0} hours"),
        _ => FormattableString.Invariant($"{time.TotalMinutes:0.#} minutes"),
    };

    /// <summary>An adapter with its lengths, and where the hand has to be.</summary>
    /// <param name="tool">The tool it goes on; null for the wrench that the procedure states.</param>
    public static string Words(this Adapter adapter, TorqueTool? tool = null)
    {
        ArgumentNullException.ThrowIfNull(adapter);
        var (setting, angle) = (adapter.Setting, adapter.Setting.Angle.Degrees);
        var direction = angle switch { 0 => "straight out", 90 => "at 90 degrees, where it changes nothing", _ => FormattableString.Invariant($"at {angle:0.#} degrees") };
        var wrench = adapter.AsksLength && tool?.LengthMm is { } length
            ? FormattableString.Invariant($"on {tool.Name} of {length:0.#} mm")
            : FormattableString.Invariant($"on a wrench of {setting.Wrench.Millimeters:0.#} mm");
        return FormattableString.Invariant($"{adapter.Name}, {setting.Adapter.Millimeters:0.#} mm {direction}, {wrench} with the hand at its mark");
    }

    /// <summary>What the instruction says of the run-down torque.</summary>
    public static string RunDownWords(this JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return group.RunDown switch
        {
            RunDown.Add => $"its run-down torque is read and added, {group.RunDownPermitted} permitted",
            RunDown.Includes => "its run-down torque is in the stated torque",
            _ => "not stated",
        };
    }

    /// <summary>Nut, engaged thread and bearing face, as far as they are stated; empty where none is.</summary>
    public static string MatingWords(this JointGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        string?[] words =
        [
            group.Nut is { } nut ? $"Nut of class {nut}." : null,
            group.Engaged is { } engaged
                ? FormattableString.Invariant($"Engaged over {engaged.Length.Millimeters:0.##} mm, tensile strength {engaged.Tensile.Megapascals:0.#} MPa.")
                : null,
            group.BearingLimit is { } bears ? FormattableString.Invariant($"The face bears {bears.Megapascals:0.#} MPa.") : null,
        ];
        return string.Join(' ', words.OfType<string>());
    }

    /// <summary>What a step waits for.</summary>
    public static string Words(this WaitsFor wait, Procedure procedure)
    {
        ArgumentNullException.ThrowIfNull(procedure);
        return wait switch
        {
            WaitsFor.ForStep(var id) => $"“{procedure.Steps.First(step => step.Id == id).Title}”",
            WaitsFor.ForGroup(var id, var stage) => $"{procedure.Group(id).Name} at stage {stage}",
            WaitsFor.ForCure(var id, var hours) => FormattableString.Invariant($"{hours} h cure of {procedure.Group(id).Name}"),
            WaitsFor.ForResult(var name) => $"the result “{name}”",
            _ => throw new ArgumentOutOfRangeException(nameof(wait), wait, "Not a wait."),
        };
    }
}
