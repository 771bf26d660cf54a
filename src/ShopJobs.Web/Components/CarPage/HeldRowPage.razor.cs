using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>A row of held fasteners decided at once, each by an entry of its own.</summary>
public sealed partial class HeldRowPage
{
    private readonly HashSet<JointPosition> ticked = [];
    private IReadOnlyList<DecisionRow> rows = [];
    private string? done;
    private bool nothing;

    [SupplyParameterFromQuery(Name = "joint")]
    private string? JointKey { get; set; }

    [SupplyParameterFromQuery(Name = "place")]
    private string? JointPlace { get; set; }

    /// <summary>Only what this tool tightened and is in doubt.</summary>
    [SupplyParameterFromQuery(Name = "tool")]
    private Guid? ByTool { get; set; }

    [Inject]
    private CarEntries Entries { get; set; } = default!;

    private string Title => ByTool is { } tool ? $"In doubt by {JointLineWords.ToolName(Reading!, new ToolId(tool))}" : "Held: decide several at once";

    private IReadOnlyList<JointPosition> Chosen => [.. rows.Select(row => row.Position).Where(ticked.Contains)];

    private RiskClass? Risk => Chosen.Select(position => Reading!.State.Of(position).Last?.Fact.Spec.Risk
        ?? Opening.GroupOn(Reading.State, Reading.Now, position)?.Group.Risk ?? RiskClass.A).Cast<RiskClass?>().Min();

    private IReadOnlyList<HoldPoint> AboutMe => [.. Refusals(Reading!.Now, Disposition.Replace, null)
        .Where(point => point.Reason is HoldReason.OwnWork or HoldReason.NoRight or HoldReason.Tied).DistinctBy(point => point.Reason)];

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
        if (Reading is null)
        {
            return;
        }

        rows = [.. DecisionRow.Of(Reading, Entries.Read(CarId, Reading.State.Number)).Where(row => IsAsked(row.Position))];
        ticked.IntersectWith(rows.Select(row => row.Position));
    }

    private bool IsAsked(JointPosition position) =>
        (JointKey is null || (position.Key == JointKey && position.Place == JointPlace))
        && (ByTool is not { } tool || Reading!.State.DoubtsOn(Reading.State.Of(position), Reading.Now.Tool).Any(doubt => doubt.Tool == new ToolId(tool)));

    private void Tick(JointPosition position)
    {
        if (!ticked.Remove(position))
        {
            ticked.Add(position);
        }
    }

    private void TickAll(IEnumerable<DecisionRow> joint)
    {
        var all = joint.Select(row => row.Position).ToList();
        if (all.TrueForAll(ticked.Contains))
        {
            ticked.ExceptWith(all);
        }
        else
        {
            ticked.UnionWith(all);
        }
    }

    private IReadOnlyList<HoldPoint> Against(Disposition disposition, Acceptance? acceptance) => Refusals(
        Reading!.Now with { Person = default, Rights = new HashSet<Right> { Right.Decide }, TiedTo = new HashSet<PersonId>() }, disposition, acceptance);

    private IReadOnlyList<HoldPoint> Refusals(Circumstances who, Disposition disposition, Acceptance? acceptance) => ticked.Count == 0 ? []
        : Reading!.State.Decide(Reading.State.AsShown(who, new DecideRow(Chosen, disposition, default, acceptance, "")), who) is Verdict.Refused refused ? refused.Reasons
        : [];

    private async Task DecideAsync(HoldDecision decision)
    {
        var chosen = Chosen;
        nothing = chosen.Count == 0;
        if (nothing)
        {
            return;
        }

        var books = chosen.Select(Reading!.State.Of).ToList();
        var covers = Reading.State.AsShown(Reading.Now, new DecideRow(chosen, decision.Disposition, default, null, "")).Covers;
        done = $"{JointLineWords.NamesOf(Reading, new Dictionary<PersonId, string>()).Positions(chosen)}: {JointLineWords.Of(decision.Disposition)}.";
        await TakeAsync(await Signing.SignAsync(CarId, DecisionDialogs.ToSign(
            $"{Car!.Name}: {chosen.Count} {(chosen.Count == 1 ? "fastener" : "fasteners")}",
            decision with { Shown = [.. rows.Where(row => ticked.Contains(row.Position)).Select(row => row.Line(Reading)), .. decision.Shown] },
            books.SelectMany(book => book.Workers.Union(book.Holds.SelectMany(hold => hold.Workers.Add(hold.By)))).ToHashSet(),
            (reason, acceptance, shown) => new DecideRow(chosen, decision.Disposition, reason, acceptance, shown) { Covers = covers })));
    }
}
