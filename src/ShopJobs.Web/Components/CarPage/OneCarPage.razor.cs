using System.Text;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.JobEnds;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Everything about one car, on one page.</summary>
public sealed partial class OneCarPage
{
    private IReadOnlyDictionary<JobId, Job> jobs = new Dictionary<JobId, Job>();
    private IReadOnlyList<AssignedPerson> assigned = [];
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private IReadOnlyDictionary<long, Recorded> ended = new Dictionary<long, Recorded>();
    private IReadOnlyDictionary<(JobId Job, string Group), PartChoice> chosen = new Dictionary<(JobId, string), PartChoice>();
    private IReadOnlyList<JointLine> history = [];
    private IReadOnlyDictionary<ContentDigest, string> texts = new Dictionary<ContentDigest, string>();
    private JobStateWords states = default!;
    private IReadOnlyList<JointSeen> seen = [];
    private NextStep? next;
    private string? done;

    [SupplyParameterFromQuery(Name = "joint")]
    private string? JointKey { get; set; }

    [SupplyParameterFromQuery(Name = "place")]
    private string? JointPlace { get; set; }

    /// <summary>The joint that is looked at, when the address names one that the car has.</summary>
    private Joint? Chosen => JointKey is { } key && JointPlace is { } place && Reading is { } reading
        && (reading.Now.Register.Kinds.TryGetValue(key, out var kind)
            ? kind.Places.Contains(place)
            : reading.State.Positions.Keys.Any(position => position.Joint == new Joint(key, place)))
        ? new Joint(key, place)
        : null;

    protected override void OnParametersSet() => ReadHistory();

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
        if (Reading is null)
        {
            return;
        }

        jobs = await Rows.JobsAsync(CarId);
        assigned = await Rows.AssignedAsync(CarId);
        chosen = await Parts.ChosenAsync(CarId);
        names = await People.NamesAsync();
        seen = JointsSeen.Of(Reading.State, Reading.Now);
        next = Reading.State.NextStepOf(Reading.Now, Reading.Tools.Values, IsManned);
        states = await JobStates.OfAsync([Reading.State]);
        ended = Reading.State.Releases.Values.Select(release => release.VoidBy).Distinct()
            .Select(number => Entries.Find(CarId, number)).OfType<Recorded>().ToDictionary(entry => entry.Number);
        ReadHistory();
    }

    private bool IsManned(JobId job, string step) =>
        assigned.Any(person => person.Assignment.JobId == job && (person.Assignment.StepInstanceId is null || person.Assignment.StepInstanceId == step));

    private void ReadHistory()
    {
        history = Reading is { } reading && Chosen is { } joint
            ? JointHistory.Of(Entries.Read(CarId, reading.State.Number), joint)
            : [];
        texts = history.Count == 0 ? texts : Entries.Texts(history.SelectMany(line => line.Recorded.Entry.Facets().Texts).Select(text => text.Digest));
    }

    private async Task DeclareAsync(DeclareCondition declared)
    {
        await RunAsync(declared);
        done = $"{string.Join(", ", declared.Conditions)}{(declared.Places is { } places ? $", {string.Join(", ", places)}" : "")}.";
    }

    private async Task OpenAsync((IReadOnlyList<JointPosition> Positions, string Why) open)
    {
        var consequences = OpeningConsequences.Of(Reading!.State, Reading.Now, open.Positions);
        var reason = open.Why.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(open.Why));
        await RunAsync(new OpenPositions(open.Positions, null, reason?.Digest), reason is null ? [] : [reason]);
        done = $"Open now: {string.Join("; ", OpeningWords.Lines(consequences, Reading.Now))}";
    }

    private async Task HoldAsync((long Result, string Why) hold)
    {
        var reason = NewContent.Of(Encoding.UTF8.GetBytes(hold.Why));
        await RunAsync(new HoldWork(reason.Digest) { Result = hold.Result }, [reason]);
        done = "The result is held until somebody else decides it.";
    }

    private async Task AnsweredAsync(DeskAnswer answer)
    {
        Answer = answer;
        done = null;
        await ReadAsync();
    }
}
