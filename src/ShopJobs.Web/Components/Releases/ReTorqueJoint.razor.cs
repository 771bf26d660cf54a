using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Releases;

/// <summary>Takes the re-torque of one joint. A set value is typed once for the joint, a reading for each fastener.</summary>
public sealed partial class ReTorqueJoint
{
    private List<TorqueTool> tools = [];
    private ToolId? tool;
    private string value = "";
    private string angle = "";
    private string? problem;
    private string? angleProblem;
    private string interval = "";
    private string? intervalProblem;
    private bool busy;

    [Parameter, EditorRequired]
    public CarReading Reading { get; set; } = default!;

    [Parameter, EditorRequired]
    public DueJoint Due { get; set; } = default!;

    /// <summary>The odometer as it is typed for the car.</summary>
    [Parameter, EditorRequired]
    public OdometerEntry Odometer { get; set; } = default!;

    /// <summary>Asks for the signature; true when it was recorded. What was typed stays until it is.</summary>
    [Parameter, EditorRequired]
    public Func<ToSign<SignedCommand>, Task<bool>> OnRecord { get; set; } = default!;

    /// <summary>One touch says the car's condition.</summary>
    [Parameter]
    public EventCallback<DeclareCondition> OnDeclare { get; set; }

    private string TitleId => $"due-{Due.Joint.Key.Replace('.', '-')}-{Due.Joint.Place}";

    private JointPosition? Next => Due.Due is [var first, ..] ? first : null;

    /// <summary>What the tool is set to: through the adapter, with the run-down torque that was recorded at the final pull.</summary>
    private EnteredTorque ToSet => ToSetOn(Tool);

    private EnteredTorque ToSetOn(TorqueTool? on) => Due.Instance.Group.SettingFor(Due.Instance.Group.Final, RunDown, on);

    private EnteredTorque? RunDown => Due.Instance.Group.RunDown == Domain.Fasteners.RunDown.Add && Next is { } next ? Reading.State.Of(next).RunDownOf() : null;

    private string Setting => Tool is null && Due.Instance.Group.Adapter is { AsksLength: true } through
        ? $"{Due.Instance.Group.Final.Value} at the fastener with the {through.Name}; choose the tool for what it is set to"
        : ToSet == Due.Instance.Group.Final.Value
        ? Due.Instance.Group.Final.Value.ToString()
        : FormattableString.Invariant($"{ToSet.Value:0.0} {ToSet.Unit.Symbol()} on the tool for {Due.Instance.Group.Final.Value}{(RunDown is { } added ? $" and {added} run-down" : "")}{(Due.Instance.Group.Adapter is { } adapter ? $" with the {adapter.Name}" : "")}");

    private TorqueTool? Tool => tools.Find(candidate => candidate.Id == tool);

    private bool IsClick => Tool?.Kind == ToolKind.Click;

    protected override void OnParametersSet() => tools =
    [
        .. Reading.Tools.Values.Where(candidate => candidate.OutOfUseBy == 0 && Reading.Now.IsInDate(candidate) && !Reading.Now.IsAtItsLimit(candidate))
            .Select(candidate => candidate.Tool).OfType<TorqueTool>()
            .Where(candidate => candidate.IsInRange(ToSetOn(candidate)))
            .OrderBy(candidate => candidate.Name, StringComparer.OrdinalIgnoreCase),
    ];

    // Through an adapter only a tool whose own length is entered says what it is to be set to.
    private IEnumerable<TorqueTool> Ready => tools.Where(Due.Instance.Group.KnowsSettingOf);

    private IReadOnlyList<string> WithoutLength => [.. tools.Except(Ready).Select(candidate => candidate.Name)];

    private decimal? Turned => TypedNumber.Alone(angle, "°");

    private IEnumerable<string> Warnings(JointPosition position) =>
        new[] { ReTorqueWords.Early(Reading, position, Odometer.Km), ReTorqueWords.TooFar(Turned), ReTorqueWords.Otherwise(Reading, Due), Outside }.OfType<string>();

    // By the rules that will judge it: what is on the tool, not what is at the fastener.
    private string? Outside => Tool is { } on && EnteredTorque.TryParse(value, on.Unit, out var typed, out _) && ToSet == Due.Instance.Group.Final.Value
        ? ReTorqueWords.Outside(Due, typed)
        : null;

    // What the last stage asks of the car and nobody has said since it came back, the one or the other way.
    private List<CarCondition> Unsaid => [.. Due.Conditions.Where(asked => Due.SaidOf(Reading, asked) is null)];

    private string? PlaceOf(CarCondition condition) => Reading.Now.Register.AspectOf(condition.Aspect).OfPlace ? Due.Joint.Place : null;

    private Task DeclareAsync(CarCondition condition) =>
        OnDeclare.InvokeAsync(new DeclareCondition([condition]) { Places = PlaceOf(condition) is { } place ? [place] : null });

    private async Task RecordAsync(IReadOnlyList<JointPosition> positions, bool moved)
    {
        if (busy || Tool is not { Id: { } taken } chosen)
        {
            return;
        }

        angleProblem = null;
        if (!EnteredTorque.TryParse(value, chosen.Unit, out var entered, out problem))
        {
            return;
        }

        var turned = Turned;
        if (moved ? turned is not > 0 : angle.Trim().Length > 0)
        {
            angleProblem = moved ? "Type by how many degrees it moved, for example 15." : "An angle is typed, so it moved: press MOVED, or clear the angle.";
            return;
        }

        if (Odometer.Read is not { } read || Odometer.Problem(needed: true) is not null)
        {
            problem = $"Above, at the car's odometer: {Odometer.Problem(needed: true)}";
            return;
        }

        var early = positions.Any(IsSettledEarly);
        var why = TypedText.Of(Odometer.WhyLower);
        var request = new SignRequest(
            early ? "SIGN: settled early, by me as lead" : "SIGN: re-torqued by me",
            $"Re-torque: {string.Join(", ", positions.Select(Reading.Now.Name))}",
            [
                $"{(IsClick ? "Set to" : "Read")} {entered}, {chosen.Name}",
                moved ? FormattableString.Invariant($"Moved by {turned}°") : positions.Count == 1 ? "Not moved" : "Each was pulled, in the pattern; none moved",
                $"Odometer {read.Words}",
                .. why is null ? [] : new[] { $"The odometer is lower than before: {Odometer.WhyLower}" },
                .. Warnings(positions[0]),
            ],
            new CommandId(Guid.NewGuid()))
        { Needs = early ? Right.Lead : Right.Record };
        busy = true;
        var recorded = await OnRecord(new ToSign<SignedCommand>(request, shown => Reading.State.AsShown(Reading.Now, new RecordSettled(
            Due.Job, Due.Instance.Group.Id, positions, moved, moved ? turned : null,
            IsClick ? TorqueKind.SettingConfirmed : TorqueKind.Reading, entered, taken, read.Km, shown)
        {
            Odometer = read,
            OdometerWhy = why?.Digest,
        }), why));
        busy = false;
        if (recorded)
        {
            (angle, value) = ("", IsClick ? value : "");
        }
    }

    private bool IsAtLastDay(JointPosition position) => Reading.State.IsAtItsLastDay(Reading.Now, Reading.State.Of(position));

    // At its last day and below its distance only the lead's signature settles it.
    private bool IsSettledEarly(JointPosition position) =>
        IsAtLastDay(position) && Reading.State.IsBelowItsDistance(Reading.State.Of(position), Odometer.Km);

    private bool MayBeExtended(JointPosition position) =>
        Odometer.Km is { } km && Reading.State.MayBeExtended(Reading.Now, Reading.State.Of(position), km);

    private string LastDay(JointPosition position) =>
        Odometer.Km is null ? "Type the odometer above: below its distance the lead settles it early, or gives it a new interval."
        : IsSettledEarly(position) ? "The car was not driven far enough: re-torqued now, the lead's signature settles it early."
        : "It was driven far enough: re-torque it.";

    private async Task ExtendAsync()
    {
        intervalProblem = TypedText.Of(interval) is null ? "Write why it gets a new interval."
            : Odometer.Problem(needed: true) is { } unclear ? $"Above, at the car's odometer: {unclear}"
            : null;
        if (busy || intervalProblem is not null || Odometer.Read is not { } read)
        {
            return;
        }

        var reason = TypedText.Of(interval)!;
        var why = TypedText.Of(Odometer.WhyLower);
        var request = new SignRequest(
            "NEW INTERVAL: given by me",
            $"A new interval for the re-torque: {Reading.Now.Name(Due.Joint)}",
            [
                $"{string.Join(", ", Due.Due.Select(Reading.Now.Name))}",
                $"Odometer {read.Words}: not driven far enough to settle",
                "Its days start again today; it is given once",
                $"Why: {Typed.Clean(interval)}",
                .. why is null ? [] : new[] { $"The odometer is lower than before: {Odometer.WhyLower}" },
            ],
            new CommandId(Guid.NewGuid()))
        { Needs = Right.Lead };
        busy = true;
        var given = await OnRecord(new ToSign<SignedCommand>(
            request, shown => Reading.State.AsShown(Reading.Now, new ExtendReTorque(Due.Due, read, reason.Digest, shown) { OdometerWhy = why?.Digest }), reason, why));
        busy = false;
        interval = given ? "" : interval;
    }
}
