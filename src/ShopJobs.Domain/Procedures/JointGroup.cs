using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using UnitsNet;

namespace ShopJobs.Domain.Procedures;

/// <summary>May the hardware be used again once it was loosened.</summary>
public enum HardwareReuse
{
    Allowed,

    /// <summary>New hardware each time: hand-tight only after <em>fitted new</em>.</summary>
    SingleUse,
}

/// <summary>What to do with a pull that ended below the permitted range.</summary>
public enum IfShort
{
    /// <summary>Pull on to the target.</summary>
    Continue,

    /// <summary>Back off, inspect, start again.</summary>
    BackOff,

    /// <summary>New hardware, start again.</summary>
    Replace,
}

/// <summary>How much is redone when one position must be redone.</summary>
public enum RedoScope
{
    /// <summary>The whole joint, in its pattern.</summary>
    Joint,

    /// <summary>This position alone.</summary>
    Position,
}


/// <summary>The fastener as a part.</summary>
public sealed record Hardware(string Name, HardwareReuse Reuse);

/// <summary>Re-torque after the first drive. Forbidden, or due from and to so many km, at the latest after so many days.</summary>
public sealed record ReTorque(bool Forbidden, int? AfterKm, int? BeforeKm, int? WithinDays)
{
    /// <summary>True when the joint must be re-torqued after the first drive.</summary>
    public bool IsAsked => !Forbidden && AfterKm is not null;

    /// <summary>Degrees that a fastener may move at its re-torque and still have settled; further and it was loose (common practice, no source).</summary>
    public const decimal LargestMove = 30;

    /// <summary>Distance after the first drive at which it is overdue.</summary>
    [System.Text.Json.Serialization.JsonIgnore]
    public int? LatestKm => BeforeKm ?? AfterKm;
}

/// <summary>Two nuts jammed together drive a stud.</summary>
/// <param name="JamTorque">Torque the two nuts are jammed with.</param>
/// <param name="Group">The temporary group of the jam nuts in the same procedure.</param>
/// <param name="JamToolDeviationPercent">Permitted deviation of the tool that jams, in percent.</param>
public sealed record JamPair(EnteredTorque JamTorque, string Group, decimal JamToolDeviationPercent);

/// <summary>Fasteners that are tightened together, written once and placed at each place of its joint kind.</summary>
/// <param name="Id">Id inside the procedure.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Key">Key in the joint register.</param>
/// <param name="Thread">Thread size.</param>
/// <param name="Class">Strength class; null when the maker does not state one we know.</param>
/// <param name="ClassNote">Words about the class, such as "12.9-like, not certified".</param>
/// <param name="Seat">Seat; null when not stated: then no clamp band is computed.</param>
/// <param name="Condition">Condition of the thread that the torque assumes.</param>
/// <param name="Risk">A danger to life, B function, C nuisance.</param>
/// <param name="Hardware">The fastener as a part.</param>
/// <param name="ReTorque">Re-torque rule; null when the instruction asks none.</param>
/// <param name="RunDown">What the instruction says of run-down torque.</param>
/// <param name="Jam">Set where two nuts drive a stud.</param>
/// <param name="IfShort">What to do with a short pull.</param>
/// <param name="Redo">How much is redone.</param>
/// <param name="Temporary">Must be removed before its step is signed.</param>
/// <param name="Stages">Stages in order, torques and then angles, the last one final. Hand-tight comes before the first.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record JointGroup(
    string Id,
    string Name,
    string Key,
    ThreadSize Thread,
    StrengthClass? Class,
    string? ClassNote,
    Seat? Seat,
    ThreadCondition Condition,
    RiskClass Risk,
    Hardware Hardware,
    ReTorque? ReTorque,
    RunDown RunDown,
    JamPair? Jam,
    IfShort IfShort,
    RedoScope Redo,
    bool Temporary,
    IReadOnlyList<Stage> Stages,
    Provenance Source)
{
    /// <summary>Positions that its stages visit: as many as its joint has on the cars that it fits.</summary>
    public int Visited => Stages.SelectMany(stage => stage.Visits).DefaultIfEmpty().Max();

    /// <summary>What sits between wrench and fastener; null where the wrench goes straight on.</summary>
    public Adapter? Adapter { get; init; }

    /// <summary>What the run-down torque may be, both ends inside; a loaded document has it wherever the run-down torque is added.</summary>
    public TorqueRange? RunDownPermitted { get; init; }

    /// <summary>How long after hand-tight the final stage has to be done, such as before a locker sets; null where nothing is stated.</summary>
    public TimeSpan? Within { get; init; }

    /// <summary>The part that limits the torque where it is not the bolt, such as "the wheel bearing"; null where nothing is stated.</summary>
    public string? LimitedBy { get; init; }

    /// <summary>What a second person looks at on it, such as "the stake and the paint line"; null where it is the paint marks.</summary>
    public string? Mark { get; init; }

    /// <summary>Class of the nut on it; null where there is none or it is not stated.</summary>
    public NutClass? Nut { get; init; }

    /// <summary>The thread it is screwed into; null where it is not stated.</summary>
    public EngagedThread? Engaged { get; init; }

    /// <summary>Pressure that the face under the turned part bears; null where it is not stated.</summary>
    public Pressure? BearingLimit { get; init; }

    /// <summary>The stage that brings the joint to torque.</summary>
    public Stage Final => Stages[^1];

    /// <summary>True when an angle makes the clamp load: the torque only snugs the joint, and is never pulled again.</summary>
    public bool IsTurned => Final.Turn is not null;

    /// <summary>False where nobody may put a wrench on it again, also not to look at the first movement: turned by an angle, or re-torque forbidden.</summary>
    public bool MayBeMovedToLook => !IsTurned && ReTorque is not { Forbidden: true };

    /// <summary>The stages as they are read out: "40 N·m, then +90°, then +90°".</summary>
    public string StageWords() => string.Join(", then ", Stages.Select(stage => stage.Amount()));

    /// <summary>True when any stage of this group asks for a witness.</summary>
    public bool AsksWitness => Stages.Any(stage => stage.Witness);

    /// <summary>
    /// What is set on the wrench for a torque stage: its torque, with the run-down torque where the instruction leaves that out, through the
    /// adapter by the tool's own length. In the stage's unit, not rounded to a tool.
    /// </summary>
    /// <param name="tool">The tool that pulls; null, or one whose length is not entered, for the wrench that the procedure states.</param>
    public EnteredTorque SettingFor(Stage stage, EnteredTorque? runDown, TorqueTool? tool = null)
    {
        ArgumentNullException.ThrowIfNull(stage);
        var atFastener = runDown is { } measured ? RunDownTorque.ToSet(stage.Value, RunDown, measured) : stage.Value;
        return LeverOn(tool)?.SettingFor(atFastener) ?? atFastener;
    }

    /// <summary>False where an adapter depends on the length of a tool that nobody entered: then it is not known what the tool is to be set to.</summary>
    public bool KnowsSettingOf(TorqueTool tool) => Adapter is not { } adapter || adapter.On(tool) is not null;

    /// <summary>The adapter by the tool's own length, else by the length that the procedure states; null without an adapter.</summary>
    public AdapterSetting? LeverOn(TorqueTool? tool) => Adapter?.On(tool) ?? Adapter?.Setting;
}
