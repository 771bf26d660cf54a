using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Demo;

/// <summary>The wheel fit-up of one demo car, step by step, by one technician.</summary>
internal sealed class DemoWheels(
    DemoTablet tablet, CarDesk cars, CarId car, JobId job, Procedure procedure, DemoPeople.DemoPerson technician, ToolId wrench)
{
    private const string Group = "wheel-nuts";
    private readonly JointGroup group = procedure.Group(Group);

    public static readonly IReadOnlyList<string> Places = ["front-left", "front-right", "rear-left", "rear-right"];

    /// <summary>Says the car's condition at places: said where it is pulled, after the wheel came off there.</summary>
    public Task StandAsync(IReadOnlyList<string> places, params CarCondition[] conditions) =>
        tablet.DoAsync(car, new DeclareCondition(conditions) { Places = places });

    /// <summary>Opens, cleans, fits and snugs one wheel.</summary>
    public async Task FitAsync(string place)
    {
        await tablet.DoAsync(car, new OpenPositions(Nuts(place), job, null));
        await ConfirmAsync("faces", place);
        await tablet.DoAsync(car, new HandTighten(job, Group, Nuts(place), []));
        await ConfirmAsync("by-hand", place, new MeasuredValue("turns", 9, "turns"));
        await ConfirmAsync("snug", place);
    }

    /// <summary>Pulls the first so many visits of a stage at its value.</summary>
    public async Task PullAsync(string place, int stage, int visits)
    {
        for (var visit = 0; visit < visits; visit++)
        {
            await PullAsync(place, stage, visit, group.Stages[stage - 1].Value);
        }
    }

    /// <summary>Pulls one visit at a value.</summary>
    public Task<DeskAnswer> PullAsync(string place, int stage, int visit, EnteredTorque value)
    {
        var position = new JointPosition(group.Key, place, group.Stages[stage - 1].Visits[visit]);
        var cycle = cars.Read(car, null).State.Of(position).Cycle;
        return tablet.DoAsync(car, new RecordTorque(job, Group, position, cycle, stage, visit, TorqueKind.SettingConfirmed, value, wrench, []));
    }

    /// <summary>Pulls every visit of a stage.</summary>
    public Task PullAllAsync(string place, int stage) => PullAsync(place, stage, group.Stages[stage - 1].Visits.Count);

    /// <summary>A second person looks at a stage and accepts it.</summary>
    public Task WitnessAsync(string place, int stage, DemoPeople.DemoPerson witness) => tablet.SignAsync(
        car, witness, shown => new Witness(job, Group, place, stage, WitnessMethod.LookedAtMark, true, null, shown));

    /// <summary>Signs a step with all its ticks.</summary>
    public Task ConfirmAsync(string step, string? place, params MeasuredValue[] values)
    {
        var ticks = procedure.Steps.First(known => known.Id == step).Ticks.Select(tick => tick.Id).ToList();
        var instance = place is null ? step : $"{step}@{place}";
        return tablet.SignAsync(car, technician, shown => new ConfirmStep(job, instance, ticks, values, false, null, shown));
    }

    private IReadOnlyList<JointPosition> Nuts(string place) =>
        [.. group.Final.Visits.Distinct().Order().Select(number => new JointPosition(group.Key, place, number))];
}
