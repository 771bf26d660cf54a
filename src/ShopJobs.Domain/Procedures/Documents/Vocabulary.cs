using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>The fixed words of the two documents.</summary>
internal static class Vocabulary
{
    public static readonly Dictionary<string, bool> YesNo = new() { ["true"] = true, ["false"] = false };

    public static readonly Dictionary<string, ThreadCondition> Condition = new()
    {
        ["dry"] = ThreadCondition.Dry,
        ["oiled"] = ThreadCondition.Oiled,
        ["pre-applied locker"] = ThreadCondition.PreAppliedLocker,
        ["locker"] = ThreadCondition.Locker,
        ["anti-seize"] = ThreadCondition.AntiSeize,
    };

    public static readonly Dictionary<string, RiskClass> Risk = new() { ["A"] = RiskClass.A, ["B"] = RiskClass.B, ["C"] = RiskClass.C };

    public static readonly Dictionary<string, HardwareReuse> Reuse = new()
    {
        ["allowed"] = HardwareReuse.Allowed,
        ["single-use"] = HardwareReuse.SingleUse,
    };

    public static readonly Dictionary<string, RunDown> RunDown = new()
    {
        ["not stated"] = Fasteners.RunDown.NotStated,
        ["includes"] = Fasteners.RunDown.Includes,
        ["add"] = Fasteners.RunDown.Add,
    };

    public static readonly Dictionary<string, IfShort> IfShort = new()
    {
        ["continue"] = Procedures.IfShort.Continue,
        ["back-off"] = Procedures.IfShort.BackOff,
        ["replace"] = Procedures.IfShort.Replace,
    };

    public static readonly Dictionary<string, RedoScope> Redo = new() { ["joint"] = RedoScope.Joint, ["position"] = RedoScope.Position };

    public static readonly Dictionary<string, Evidence> Evidence = new()
    {
        ["setting"] = Procedures.Evidence.Setting,
        ["reading"] = Procedures.Evidence.Reading,
        ["setting or reading"] = Procedures.Evidence.SettingOrReading,
    };

    public static readonly Dictionary<string, ProvenanceBasis> Basis = new()
    {
        ["stated"] = ProvenanceBasis.Stated,
        ["shop decision"] = ProvenanceBasis.ShopDecision,
    };

    public static readonly Dictionary<string, StepPer> Per = new() { ["car"] = StepPer.Car, ["place"] = StepPer.Place };

    /// <summary>What an aspect of the car's condition is said of: true for a place of its own.</summary>
    public static readonly Dictionary<string, bool> AspectOf = new() { ["car"] = false, ["place"] = true };

    public static readonly Dictionary<string, Filling> Filling = new()
    {
        ["bolt"] = Procedures.Filling.Bolt,
        ["stud"] = Procedures.Filling.Stud,
        ["nut"] = Procedures.Filling.Nut,
    };

    public static readonly Dictionary<string, ReleaseKind> Release = new()
    {
        ["move"] = ReleaseKind.Move,
        ["road"] = ReleaseKind.Road,
        ["track"] = ReleaseKind.Track,
    };

    public static readonly Dictionary<string, LeastState> Least = new()
    {
        ["counts"] = LeastState.Counts,
        ["hand-tight"] = LeastState.HandTight,
        ["made-here"] = LeastState.MadeHere,
    };

    /// <summary>Parts of the car, with whether nothing less than torque ever lets the car move (wheels, hubs, steering, brakes).</summary>
    public static readonly Dictionary<string, bool> Systems = new()
    {
        ["wheels"] = true,
        ["hubs"] = true,
        ["steering"] = true,
        ["brakes"] = true,
        ["struts"] = false,
        ["bars"] = false,
        ["arms"] = false,
        ["subframe"] = false,
        ["drive"] = false,
        ["engine"] = false,
        ["body"] = false,
        ["seats"] = false,
    };
}
