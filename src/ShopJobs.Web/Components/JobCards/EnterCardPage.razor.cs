using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>A card that was filled in by hand, entered step by step.</summary>
public sealed partial class EnterCardPage : CarScreen
{
    private readonly HashSet<string> recorded = [];
    private TypedCard typed = new();
    private JobBook? job;
    private PlacedProcedure? placed;
    private StepInstance? step;
    private CardPlan? plan;
    private bool sent;
    private bool busy;
    private IReadOnlyList<CardAnswer> answers = [];
    private IReadOnlyList<PeopleShelf.Named> others = [];

    [Parameter]
    public Guid Job { get; set; }

    /// <summary>The step that is entered.</summary>
    [SupplyParameterFromQuery(Name = "step")]
    private string? Asked { get; set; }

    [Inject]
    private JobCardDesk Cards { get; set; } = default!;

    [Inject]
    private PeopleShelf People { get; set; } = default!;

    [Inject]
    private ShopClock Clock { get; set; } = default!;

    private IReadOnlyList<HoldPoint> Gate => step is null ? [] : Reading!.HoldsBeforeStart(job!, step);

    protected override async Task OnParametersSetAsync()
    {
        Choose();
        await LookAsync();
    }

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
        typed.Day ??= Clock.Today;
        others = [.. (await People.WithRightAsync(null)).Where(person => person.Id != Present?.Person)];
        Choose();
        await LookAsync();
    }

    private void Choose()
    {
        job = Reading?.State.Jobs.GetValueOrDefault(new JobId(Job));
        placed = job is null ? null : Reading!.Placed(job);
        step = Asked is null ? null : placed?.Step(Asked);
    }

    // What it would become, as far as it is typed.
    private async Task LookAsync() => plan = step is null || Present is null ? null
        : CardPlan.Of(await Cards.FactsAsync(Reading!, job!, step, typed, Present), typed);

    private async Task EnterAsync()
    {
        if (busy || step is null)
        {
            return;
        }

        (busy, sent) = (true, true);
        try
        {
            await LookAsync();
            if (plan is not { Wrong.Count: 0 })
            {
                return;
            }

            answers = await Cards.EnterAsync(CarId, plan, recorded);
            if (answers.All(one => one.Answer.Recorded))
            {
                typed = new TypedCard { Number = typed.Number, IsOwn = typed.IsOwn, DoneBy = typed.DoneBy, Day = typed.Day };
                recorded.Clear();
                sent = false;
            }

            await ReadAsync();
        }
        finally
        {
            busy = false;
        }
    }

    // Said once it was sent: nobody is told while he still types what is missing.
    private string? Wrong(string field) => sent ? plan?.Wrong.GetValueOrDefault(field) : null;

    private StepStanding Standing(StepInstance one) => Reading!.State.StandingOf(job!, placed!, one);
}
