using System.Globalization;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Shows what holds a position and takes a decision. Whether it may be decided so is the domain's to say.</summary>
public sealed partial class DecidePanel
{
    private List<string> happened = [];
    private List<HoldPoint> aboutMe = [];
    private Disposition? decided;
    private RiskClass risk;

    [Parameter, EditorRequired]
    public CarReading Reading { get; set; } = default!;

    [Parameter, EditorRequired]
    public JointPosition Position { get; set; }

    [Parameter]
    public IReadOnlyDictionary<PersonId, string> Names { get; set; } = new Dictionary<PersonId, string>();

    /// <summary>What was written with the entries that hold it, by number.</summary>
    [Parameter]
    public IReadOnlyDictionary<long, string> Texts { get; set; } = new Dictionary<long, string>();

    [Parameter]
    public EventCallback<(HoldDecision Decision, Covering Covers)> OnDecide { get; set; }

    /// <summary>What became of the last decision.</summary>
    [Parameter]
    public DeskAnswer? Answer { get; set; }

    private bool IsUndecided { get; set; }

    private bool IsToRedo => decided is Disposition.Rework or Disposition.Replace && !Reading.State.IsAtTorque(Reading.State.Of(Position));

    // The step that works on it, where a running job has one.
    private (JobId Job, StepInstance Step)? ToRedo => IsToRedo ? Closing.StepFor(Reading, new HoldPoint(HoldReason.Held) { Position = Position }) : null;

    protected override void OnParametersSet()
    {
        var book = Reading.State.Of(Position);
        risk = book.Last?.Fact.Spec.Risk ?? Opening.GroupOn(Reading.State, Reading.Now, Position)?.Group.Risk ?? RiskClass.A;
        var refused = Refusals(Reading.Now, Disposition.Replace, null);
        IsUndecided = !refused.Exists(point => point.Reason is HoldReason.NothingToDecide or HoldReason.DecidedBefore or HoldReason.UnknownPosition);
        decided = (book.Holds.FindLast(hold => hold.Decision is not null)?.Decision) ?? book.LastDecision?.Disposition;
        aboutMe = [.. refused.Where(point => point.Reason is HoldReason.OwnWork or HoldReason.NoRight or HoldReason.Tied)];
        happened =
        [
            .. book.Holds.Select(hold => Line(book, hold)),
            .. Reading.State.DoubtsOn(book, Reading.Now.Tool).Select(found => found.Tool).Distinct()
                .Select(tool => $"Tightened with {JointLineWords.ToolName(Reading, tool)}, which is in doubt since its last good calibration."),
            .. OtherSpecifications.OfRunningJobs(Reading.State, Reading.Now, book)
                .Select(pull => $"Entry {pull.Number.ToString(CultureInfo.InvariantCulture)}, {pull.Amount()}, was made for another job and does not pass what the running one asks."),
            risk.Words(),
        ];
    }

    private string Line(PositionBook book, Hold hold)
    {
        var what = book.Pulls.Find(pull => pull.Number == hold.Number) is { } pull
            ? $": {JointLineWords.Of(pull.Fact.Kind)} {pull.Amount()}{(pull.AtFastener == pull.Value ? "" : $" ({pull.AtFastener} at the fastener)")}, {JointLineWords.ToolName(Reading, pull.Fact.Tool)}, stage {Number(pull.Fact.Stage)} of {Number(pull.Fact.Spec.Stages)}; permitted {Limits(pull.Fact.Spec)}"
            : "";
        var decision = hold.Decision is { } made ? $" Decided: {JointLineWords.Of(made)}." : "";
        var said = Texts.TryGetValue(hold.Number, out var text) ? $" “{text}”" : "";
        return $"{Clock.Words(hold.At)}, {Names.GetValueOrDefault(hold.By, "somebody")}: {HoldWords.Of(hold.Reason)}{what}.{said}{decision}";
    }

    private static string Limits(SpecificationInForce spec) =>
        spec.Turn?.Permitted() ?? string.Create(CultureInfo.InvariantCulture, $"{spec.Minimum:0.##} to {spec.Maximum:0.##} N·m");

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string NextWords(Disposition disposition) => disposition switch
    {
        Disposition.Replace => "Back it off, fit new hardware, redo it.",
        Disposition.Rework => "Back it off, inspect it, redo it.",
        _ => "Go on with the work.",
    };

    private IReadOnlyList<HoldPoint> Against(Disposition disposition, Acceptance? acceptance) =>
        Refusals(Reading.Now with { Person = default, Rights = new HashSet<Right> { Right.Decide }, TiedTo = new HashSet<PersonId>() }, disposition, acceptance);

    private List<HoldPoint> Refusals(Circumstances who, Disposition disposition, Acceptance? acceptance) =>
        Reading.State.Decide(Reading.State.AsShown(who, new DecideHold(Position, disposition, default, acceptance, "")), who) is Verdict.Refused refused
            ? [.. refused.Reasons]
            : [];

    private Task TakeAsync(HoldDecision decision) => OnDecide.InvokeAsync((
        decision with { Shown = [.. happened, .. decision.Shown] },
        Reading.State.AsShown(Reading.Now, new DecideHold(Position, decision.Disposition, default, null, "")).Covers));
}
