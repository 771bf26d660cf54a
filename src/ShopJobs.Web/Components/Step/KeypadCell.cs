using System.Globalization;
using System.Text.Json;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.Step;

/// <summary>What the keypad's script needs to know of the cell that is next.</summary>
/// <param name="Typed">Run-down torque typed for this cell and not recorded yet.</param>
public sealed record KeypadCell(StepScene Scene, Cell Cell, ToolOffer Tool, RunDownTyped? Typed = null)
{
    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    /// <summary>A click tool's setting is typed once for a stage, then each nut is one touch.</summary>
    public bool IsSetting => Kind == TorqueKind.SettingConfirmed;

    /// <summary>Symbol of the unit beside the field: the tool's, or the degree.</summary>
    public string Unit => Cell.Stage.Turn is null ? Tool.Tool.Unit.Symbol() : Degree;

    private const string Degree = "°";

    private TorqueKind Kind => Tool.Tool.Kind.Evidence(Cell.Stage);

    /// <summary>The cell's name on the tablet: what is typed for it is kept under this.</summary>
    public string Key => string.Create(
        CultureInfo.InvariantCulture,
        $"{Scene.Car.Id.Value}/{Scene.Job.Id.Value}/{Cell.Instance.Group.Id}/{Cell.Position.Place}/{Cell.Position.Number}/{Cell.Cycle}/{Cell.Stage.Number}/{Cell.Visit}");

    /// <summary>A setting is kept for this person, stage, joint and tool, and asked again after the joint was opened.</summary>
    public string SettingKey => string.Create(
        CultureInfo.InvariantCulture,
        $"{Scene.Here.Person.Value}/{Scene.Car.Id.Value}/{Scene.Job.Id.Value}/{Cell.Instance.Group.Id}/{Cell.Position.Place}/{(Adds ? $"{Cell.Position.Number}/" : "")}{Cell.Cycle}/{Cell.Stage.Number}/{Tool.Id.Value}");

    // Each self-locking nut has its own run-down torque, and so its own setting.
    private bool Adds => Cell.Instance.Group.RunDown == RunDown.Add;

    /// <summary>A tool has one setting at a time: what was typed for another stage is forgotten with it.</summary>
    public string ToolKey => string.Create(CultureInfo.InvariantCulture, $"{Scene.Here.Person.Value}/{Tool.Id.Value}");

    /// <summary>What the tablet keeps under <see cref="ToolKey"/> of a tool that is set as the step says.</summary>
    public string SetAsInstructed => $"{SettingKey}\n{ToSet.Value.ToString(CultureInfo.InvariantCulture)}";

    /// <summary>The position in words.</summary>
    public string Label => Scene.Reading.Now.Name(Cell.Position);

    /// <summary>The report but for its id and value, as JSON.</summary>
    public string Report => (CellReport.By(Scene, CellReportKind.Pull) with
    {
        Job = Scene.Job.Id.Value,
        Group = Cell.Instance.Group.Id,
        Positions = [CellPosition.Of(Scene.State.Of(Cell.Position))],
        Cycle = Cell.Cycle,
        Stage = Cell.Stage.Number,
        Visit = Cell.Visit,
        Kind = Kind,
        Unit = Tool.Tool.Unit,
        Tool = Tool.Id.Value,
        RunDown = Recorded is null && Typed is { Value: var typed } ? typed.NewtonMetres.ToString(CultureInfo.InvariantCulture) : null,
    }).ToJson();

    /// <summary>
    /// The cells after this one that the same setting is for, as JSON: what the tablet goes on with while it has no line. Of each only what
    /// its report has otherwise than this one's.
    /// </summary>
    public string Ahead => JsonSerializer.Serialize(
        Scene.Ahead.Select(cell => this with { Cell = cell }).TakeWhile(next => next.SettingKey == SettingKey).Select(next => new
        {
            Cell = next.Key,
            next.Label,
            next.Cell.Position.Number,
            Report = new { Positions = new[] { CellPosition.Of(Scene.State.Of(next.Cell.Position)) }, next.Cell.Cycle, next.Cell.Visit },
        }),
        Json);

    /// <summary>Which numbers are asked for again, as JSON.</summary>
    public string Guard => Cell.Stage.Turn is { Degrees: var degrees }
        ? Guarded(TypingGuard.ForAngle(degrees), Turn.Amount(degrees), degrees, 0, (Cell.Stage.Turn.Minimum, Cell.Stage.Turn.Maximum))
        : Guarded(
            TypingGuard.For(Exact, Tool.Tool.Unit), ToSet.ToString(), Exact.NewtonMetres / Tool.Tool.Unit.NewtonMetresPerUnit(), Tool.Tool.Graduation / 2, Permitted);

    // On the tool; through an adapter or with a run-down torque added only the far check is made.
    private (decimal Least, decimal Most)? Permitted => Exact.NewtonMetres == Cell.Stage.Value.NewtonMetres
        ? (Math.Round(Cell.Stage.Permitted.Minimum.NewtonMetres / Tool.Tool.Unit.NewtonMetresPerUnit(), 3), Math.Round(Cell.Stage.Permitted.Maximum.NewtonMetres / Tool.Tool.Unit.NewtonMetresPerUnit(), 3))
        : null;

    private string Guarded(TypingGuard guard, string target, decimal instructed, decimal half, (decimal Least, decimal Most)? permitted) => JsonSerializer.Serialize(
        new
        {
            unit = Unit,
            target,
            guard.Least,
            guard.Most,
            alike = guard.Alike.Select(other => new { other.Target.Value, unit = other.Target.Unit.Symbol(), other.Least, other.Most }),
            instructed,
            half,
            minimum = permitted?.Least,
            maximum = permitted?.Most,
        },
        Json);

    /// <summary>The run-down torque that belongs to this cell: recorded before, or typed now.</summary>
    public EnteredTorque? RunDownTorque => Adds ? Recorded ?? Typed?.Value : null;

    /// <summary>True while the run-down torque is added and not known: then there is no number to set yet.</summary>
    public bool WaitsForRunDown => Adds && RunDownTorque is null;

    private EnteredTorque? Recorded => Scene.State.Of(Cell.Position).RunDownOf();

    private EnteredTorque Exact => Cell.Instance.Group.SettingFor(Cell.Stage, RunDownTorque, Tool.Tool);

    /// <summary>
    /// What to set or to pull to, in the tool's own unit; where that is not the instruction's own number, it is rounded to the
    /// tool's graduation.
    /// </summary>
    public EnteredTorque ToSet
    {
        get
        {
            var unit = Tool.Tool.Unit;
            if (Exact == Cell.Stage.Value && Exact.Unit == unit)
            {
                return Cell.Stage.Value;
            }

            var exact = Exact.NewtonMetres / unit.NewtonMetresPerUnit();
            return new EnteredTorque(Math.Round(exact / Tool.Tool.Graduation) * Tool.Tool.Graduation, unit);
        }
    }
}
