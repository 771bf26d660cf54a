using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>How far a torque tool may be off, and when it is to be calibrated again.</summary>
public sealed class ToolCard : BenchCard
{
    private readonly ChoiceField<ToolClass> kind = new("class", "Tool",
        [.. Enum.GetValues<ToolClass>().Select(each => new BenchChoice<ToolClass>(Name(each), Words(each), each))])
    {
        Example = "setting-graduated",
    };

    private readonly TorqueField torque = new("torque", "Torque") { Example = "110" };
    private readonly DayField first = new("first", "Calibrated on, or first used after it") { IsOptional = true };
    private readonly DayField day;
    private readonly NumberField cycles;
    private readonly ChoiceField<bool> dropped;

    public ToolCard()
    {
        day = new("day", "Used on") { Example = "2026-06-01", IsAsked = first.IsGiven };
        cycles = new("cycles", "Pulls since then", "", 0, 1_000_000) { Example = "0", IsWhole = true, IsAsked = first.IsGiven };
        dropped = new("dropped", "Dropped or overloaded since then", [new("no", "no", false), new("yes", "yes", true)]) { Example = "no", IsAsked = first.IsGiven };
    }

    /// <inheritdoc/>
    public override string Key => "tool";

    /// <inheritdoc/>
    public override string Question => "How far may this wrench be off?";

    /// <inheritdoc/>
    public override string Use => "The deviation ISO 6789 permits at a torque, what a display may show, and when the tool is due.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [kind, torque, first, day, cycles, dropped];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["torque given: T (1 − w) to T (1 + w)", "step of a display and uncertainty of the rig: at most w T/4"],
        [new("T", "torque set or shown, N·m"), new("w", "permitted deviation: 6 % up to 10 N·m and 4 % above; bars and screwdrivers 6 % throughout")],
        "Limits: ISO 6789-1:2017 and ISO 6789:2003, from memory: check before relying on it. Its deviation is (shown − given)/given; here, as where a target is chosen, the limit is taken of what is set or shown, which differs by less than 0.4 % of it.",
        "From the lowest marked value to the top of the tool. Its own certificate counts where it is worse. 12 months or 5000 pulls, at once after a drop.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        if (first.IsGiven(inputs) && day.Read(inputs) < first.Read(inputs))
        {
            yield return new(day, "It is used before it was calibrated: read both days again.");
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, tool, set) = (inputs.Units, kind.Read(inputs), torque.Read(inputs));
        var percent = tool.PermittedPercent(set);
        var permitted = ToolClasses.Permitted(set, percent);
        var isSetting = tool >= ToolClass.SettingGraduated;
        var due = first.IsGiven(inputs)
            && RecalibrationInterval.Iso6789.IsDue(first.Read(inputs), day.Read(inputs), (int)cycles.Read(inputs), dropped.Read(inputs));
        return new BenchAnswer(
            units.ComputedRange(permitted.Minimum, permitted.Maximum),
            FormattableString.Invariant($"At {units.Say(set)} it may be off by {percent:0} %: {units.ComputedRange(permitted.Minimum, permitted.Maximum)}."))
        {
            Pictures =
            [
                units.Torques(units.Mark(isSetting ? "set" : "shown", set)) with
                {
                    Span = units.Span("given", permitted.Minimum, permitted.Maximum, units.ComputedRange(permitted.Minimum, permitted.Maximum)),
                },
            ],
            Lines =
            [
                new("Given, not rounded", units.Range(permitted.Minimum, permitted.Maximum), "what is set or shown, less and more by its limit"),
                new("Finest step of a display", units.Computed(ToolClasses.QuarterOfDeviation(set, percent)), "at most; also the uncertainty of what it is tested against"),
                new("Loads to the top before a test", FormattableString.Invariant($"{(isSetting ? ToolClasses.SettingPreloads : ToolClasses.IndicatingPreloads)}"),
                    isSetting ? "type II, a tool that is set" : "type I, a tool that shows"),
                .. first.IsGiven(inputs)
                    ? new BenchLine[] { new("Last day", WallTime.Day(RecalibrationInterval.Iso6789.LastDay(first.Read(inputs))), "12 months; the shop or its certificate may ask sooner") }
                    : [],
            ],
            Cautions = due ? ["It is due: have it calibrated before it is used again."] : [],
        };
    }

    private static string Name(ToolClass tool) => tool switch
    {
        ToolClass.IndicatingBar => "indicating-bar",
        ToolClass.IndicatingDial => "indicating-dial",
        ToolClass.IndicatingElectronic => "indicating-electronic",
        ToolClass.IndicatingScrewdriver => "indicating-screwdriver",
        ToolClass.SettingGraduated => "setting-graduated",
        ToolClass.SettingFixed => "setting-fixed",
        ToolClass.SettingUngraduated => "setting-ungraduated",
        ToolClass.SettingScrewdriver => "setting-screwdriver",
        _ => "setting-bar",
    };

    private static string Words(ToolClass tool) => tool switch
    {
        ToolClass.IndicatingBar => "Dial or digital wrench: bar that bends or twists",
        ToolClass.IndicatingDial => "Dial or digital wrench: dial or display",
        ToolClass.IndicatingElectronic => "Dial or digital wrench: electronic",
        ToolClass.IndicatingScrewdriver => "Dial or digital screwdriver",
        ToolClass.SettingGraduated => "Click wrench: adjustable, with a scale",
        ToolClass.SettingFixed => "Click wrench: one fixed setting",
        ToolClass.SettingUngraduated => "Click wrench: adjustable, without a scale",
        ToolClass.SettingScrewdriver => "Click screwdriver",
        _ => "Click wrench: adjustable, with a bending bar",
    };
}
