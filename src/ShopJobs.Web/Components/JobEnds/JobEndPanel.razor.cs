using System.Text;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Components.Revisions;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.JobEnds;

/// <summary>Chooses what is to become of a job, says what that means and asks for the signature. Whether it may be is the domain's.</summary>
public sealed partial class JobEndPanel(CarSigning signing, CarDesk desk, WhoIsHere who, NewerRevisions newer)
{
    private const int Most = 5;
    private JobAct? act;
    private IReadOnlyList<string> lines = [];
    private IReadOnlyList<SaidHold> against = [];
    private Covering covers = Covering.Nothing;

    [Parameter, EditorRequired]
    public CarReading Reading { get; set; } = default!;

    [Parameter, EditorRequired]
    public JobBook Job { get; set; } = default!;

    [Parameter]
    public IReadOnlyDictionary<PersonId, string> Names { get; set; } = new Dictionary<PersonId, string>();

    [Parameter, EditorRequired]
    public JobStateWords States { get; set; } = default!;

    [Parameter]
    public EventCallback<DeskAnswer> OnAnswer { get; set; }

    private IEnumerable<(JobAct Act, string Words)> Offered =>
    [
        Job.OnHold is null ? (JobAct.End, "End it") : (JobAct.Resume, "Resume it"),
        .. Job.OnHold is null ? [(JobAct.Hold, "Put it on hold")] : Array.Empty<(JobAct, string)>(),
        (JobAct.Cancel, "Cancel it"),
        (JobAct.WrongCar, "It is on the wrong car"),
    ];

    protected override void OnParametersSet() => Say();

    private void Choose(JobAct one)
    {
        act = one;
        Say();
    }

    private void Say()
    {
        if (act is not { } chosen || !Offered.Any(offer => offer.Act == chosen))
        {
            (act, lines, against) = (null, [], []);
            return;
        }

        var words = new JobEndLines(Reading, Job, Names, States);
        lines = chosen == JobAct.Resume && newer.NumberFor(Job) is { } number
            ? [.. words.Of(chosen), $"Revision {number} of {Job.Fact.Procedure} is current; this job goes on by revision {Job.Fact.Revision} until the lead takes the newer one over."]
            : words.Of(chosen);
        against = [.. words.Against(chosen).Select(point => Reading.Now.Say(point))];
        covers = Covering.Of(Reading.State.Number);
    }

    private static bool NeedsReason(JobAct act) => act is JobAct.Hold or JobAct.Cancel or JobAct.WrongCar;

    private static string ReasonLabel(JobAct act) => act switch
    {
        JobAct.Hold => "Why it rests, and what it waits for",
        JobAct.Cancel => "Why it is given up",
        _ => "How it came onto this car, and where it belongs",
    };

    private static string ActWords(JobAct act) => act switch
    {
        JobAct.End => "END THE JOB",
        JobAct.Hold => "PUT IT ON HOLD",
        JobAct.Resume => "RESUME THE JOB",
        JobAct.Cancel => "CANCEL THE JOB",
        _ => "TAKE THE JOB BACK",
    };

    private async Task DoAsync(string why)
    {
        if (act is not { } chosen)
        {
            return;
        }

        var reason = NewContent.Of(Encoding.UTF8.GetBytes(why));
        var answer = chosen == JobAct.Hold ? await HoldAsync(reason) : await SignAsync(chosen, why, reason);
        if (answer is not null)
        {
            act = answer.Recorded ? null : act;
            await OnAnswer.InvokeAsync(answer);
        }
    }

    private async Task<DeskAnswer?> HoldAsync(NewContent reason) => await who.ActingAsync() is { } present
        ? await desk.RunAsync(Reading.Car, new CommandId(Guid.NewGuid()), present, new PutJobOnHold(Job.Id, reason.Digest), [reason])
        : DeskAnswer.Failed(ShopChange.Locked);

    private Task<DeskAnswer?> SignAsync(JobAct chosen, string why, NewContent reason)
    {
        IEnumerable<string> shown = NeedsReason(chosen) ? lines.Append($"Why: {why}") : lines;
        var title = $"{ActWords(chosen)}: {new JobEndLines(Reading, Job, Names, States).Title}";
        var request = new SignRequest($"SIGN: {ActWords(chosen).ToLowerInvariant()}", title, shown, new CommandId(Guid.NewGuid())) { Needs = Right.Lead };
        return signing.SignAsync(Reading.Car, new ToSign<SignedCommand>(
            request, digest => Command(chosen, digest, reason.Digest) with { Covers = covers }, NeedsReason(chosen) ? reason : null));
    }

    private SignedCommand Command(JobAct chosen, string shown, ContentDigest why) => chosen switch
    {
        JobAct.End => new EndJob(Job.Id, shown),
        JobAct.Resume => new ResumeJob(Job.Id, shown),
        JobAct.Cancel => new CancelJob(Job.Id, why, shown),
        _ => new TakeJobBack(Job.Id, why, shown),
    };
}
