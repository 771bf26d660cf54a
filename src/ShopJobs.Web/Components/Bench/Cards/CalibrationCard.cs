using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Bench.Fields;
using ShopJobs.Web.Components.Bench.Pictures;

namespace ShopJobs.Web.Components.Bench.Cards;

/// <summary>A recorded torque judged again by what a calibration found.</summary>
public sealed class CalibrationCard : BenchCard
{
    private readonly TorqueField recorded = new("recorded", "Torque as recorded") { Example = "110" };
    private readonly TorqueField least = new("least", "Least permitted torque") { Example = "105" };
    private readonly TorqueField greatest = new("greatest", "Greatest permitted torque") { Example = "115" };
    private readonly (TorqueField Set, TorqueField Rig)[] points;

    public CalibrationCard()
    {
        points =
        [
            (new("set-1", "First point: set or shown") { Example = "40" }, new("rig-1", "First point: the rig read") { Example = "38.8" }),
            (new("set-2", "Second point: set or shown") { Example = "120" }, new("rig-2", "Second point: the rig read") { Example = "115" }),
            Optional(3, "Third"), Optional(4, "Fourth"), Optional(5, "Fifth"),
        ];

        static (TorqueField, TorqueField) Optional(int number, string name)
        {
            var set = new TorqueField(FormattableString.Invariant($"set-{number}"), $"{name} point: set or shown") { IsOptional = true, IsMore = true };
            return (set, new TorqueField(FormattableString.Invariant($"rig-{number}"), $"{name} point: the rig read") { IsMore = true, IsAsked = set.IsGiven });
        }
    }

    /// <inheritdoc/>
    public override string Key => "calibration";

    /// <inheritdoc/>
    public override string Question => "What did a wrench really give, now that it is calibrated?";

    /// <inheritdoc/>
    public override string Use => "A recorded torque judged again by the points as found, before a recall goes out or stays in.";

    /// <inheritdoc/>
    public override IReadOnlyList<BenchField> Fields => [recorded, least, greatest, .. points.SelectMany(point => new BenchField[] { point.Set, point.Rig })];

    /// <inheritdoc/>
    public override BenchPaper Paper { get; } = new(
        ["given = recorded × rig/set, linear between neighbouring points"],
        [new("set", "what was set on the wrench or shown by it"), new("rig", "what the rig read at it: the torque given")],
        "Own rule on pairs of ISO 6789; outside the points nothing is known.",
        "Points as found, of one run, in one unit each. A torque outside the points counts as out of range.");

    /// <inheritdoc/>
    public override IEnumerable<BenchProblem> Problems(BenchInputs inputs)
    {
        if (!TorqueRange.TryCreate(least.Read(inputs), greatest.Read(inputs), out _, out var problem))
        {
            yield return new(least, problem);
        }
    }

    /// <inheritdoc/>
    public override BenchAnswer Answer(BenchInputs inputs)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        var (units, set) = (inputs.Units, recorded.Read(inputs));
        var permitted = new TorqueRange(least.Read(inputs), greatest.Read(inputs));
        var found = points.Where(point => point.Set.IsGiven(inputs))
            .Select(point => new CalibrationPoint(point.Set.Read(inputs).NewtonMetres, point.Rig.Read(inputs).NewtonMetres)).ToList();
        var review = TorqueReview.Of(set, TorqueUnit.NewtonMetre, found, permitted);
        var range = units.Range(permitted.Minimum, permitted.Maximum);
        var standing = review switch
        {
            TorqueReview.Known { IsInside: true } => "inside",
            TorqueReview.Known { IsUnder: true } => "below",
            TorqueReview.Known => "above",
            _ => null,
        };
        var given = review is TorqueReview.Known certain ? units.Computed(certain.Delivered, permitted.Minimum, permitted.Maximum) : null;
        return new BenchAnswer(
            given is null ? "Not known" : $"{given}, {standing}",
            given is null ? $"Not known: {units.Say(set)} lies outside the points." : $"{given} was given: {standing} {range}.")
        {
            Pictures =
            [
                units.Torques(
                [
                    .. review is TorqueReview.Known known ? new[] { units.Mark("given", known.Delivered, LineMarkKind.Value, given) } : [],
                    units.Mark("recorded", set, LineMarkKind.Beside),
                ]) with
                {
                    Permitted = units.Span("permitted", permitted.Minimum, permitted.Maximum),
                },
            ],
            Lines = review is TorqueReview.Known exact ? [new("Given, not rounded", units.Say(exact.Delivered), "between the two nearest points")] : [],
            Table = new(
                "Points",
                ["Set or shown", "Rig read", "Deviation (ISO 6789)", "In words"],
                [.. found.Select(point => (IReadOnlyList<string>)
                [
                    units.Say(new EnteredTorque(point.SetOrShown, TorqueUnit.NewtonMetre)), units.Say(new EnteredTorque(point.RigRead, TorqueUnit.NewtonMetre)),
                    point.DeviationText(), point.Words(),
                ])]),
            Cautions = review is TorqueReview.Known { IsInside: true } ? [] : ["The joint counts as not at torque until somebody has looked: hold it, and tell whoever drives the car."],
        };
    }
}
