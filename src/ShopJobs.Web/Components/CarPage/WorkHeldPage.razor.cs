using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>The decision about a held step, result or lot of parts.</summary>
public sealed partial class WorkHeldPage
{
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private string said = "";

    [Parameter]
    public long Number { get; set; }

    [Inject]
    private CarEntries Entries { get; set; } = default!;

    private WorkHold? Hold => Reading?.State.WorkHolds.GetValueOrDefault(Number);

    private IReadOnlyList<string> Happened =>
    [
        $"{Clock.Words(Hold!.At)}, {names.GetValueOrDefault(Hold.By, "somebody")} pressed HOLD: “{said}”",
        .. HeldWorkWords.Facts(Reading!, Hold),
    ];

    private IReadOnlyList<HoldPoint> AboutMe => [.. Refusals(Reading!.Now, Disposition.Replace, null)
        .Where(point => point.Reason is HoldReason.OwnWork or HoldReason.NoRight or HoldReason.Tied)];

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
        if (Hold is { } hold)
        {
            names = await People.NamesAsync();
            said = Entries.Texts([hold.Fact.Reason])[hold.Fact.Reason];
        }
    }

    private IReadOnlyList<HoldPoint> Against(Disposition disposition, Acceptance? acceptance) => Refusals(
        Reading!.Now with { Person = default, Rights = new HashSet<Right> { Right.Decide }, TiedTo = new HashSet<PersonId>() }, disposition, acceptance);

    private IReadOnlyList<HoldPoint> Refusals(Circumstances who, Disposition disposition, Acceptance? acceptance) =>
        Reading!.State.Decide(Reading.State.AsShown(who, new DecideWork(Number, disposition, default, acceptance, "")), who) is Verdict.Refused refused
            ? refused.Reasons
            : [];

    private async Task DecideAsync(HoldDecision decision)
    {
        var covers = Reading!.State.AsShown(Reading.Now, new DecideWork(Number, decision.Disposition, default, null, "")).Covers;
        await TakeAsync(await Signing.SignAsync(CarId, DecisionDialogs.ToSign(
            $"{Car!.Name}: {HeldWorkWords.Of(Reading, Hold!)}",
            decision with { Shown = [.. Happened, .. decision.Shown] },
            Deciding.DoersOf(Reading.State, Hold!).ToHashSet(),
            (reason, acceptance, shown) => new DecideWork(Number, decision.Disposition, reason, acceptance, shown) { Covers = covers })));
    }
}
