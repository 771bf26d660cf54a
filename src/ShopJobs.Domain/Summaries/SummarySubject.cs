using System.Globalization;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Summaries;

/// <summary>The car a summary is about, with what all parts of the page ask of it.</summary>
internal sealed class SummarySubject(CarState state, Circumstances now, SummaryFacts facts)
{
    private readonly HashSet<JobId> covered =
        [.. state.Jobs.Values.Where(job => job.IsRunning || !facts.LeaveOut.Contains(job.Id)).Select(job => job.Id)];

    public CarState State => state;

    public Circumstances Now => now;

    public SummaryFacts Facts => facts;

    /// <summary>The state of the newest release of a kind.</summary>
    public ReleaseStanding Standing(ReleaseKind kind) => state.StandingOf(now, kind);

    /// <summary>Jobs this page covers, oldest first.</summary>
    /// <remarks>One that was given up or taken back before anything was done is no work on this car.</remarks>
    public IEnumerable<JobBook> Jobs => state.Jobs.Values
        .Where(job => covered.Contains(job.Id) && (job.Begun || job.End is not (JobEnd.Cancelled or JobEnd.TakenBack))).OrderBy(job => job.Number);

    /// <summary>Number of the first entry of the work covered.</summary>
    public long Since => Jobs.Select(job => job.Number).DefaultIfEmpty(long.MaxValue).First();

    /// <summary>True when the position was last worked on in a job that this page covers.</summary>
    public bool Covers(PositionBook book) => book.InForce is { } job && covered.Contains(job);

    /// <summary>Every lasting position of the car, joint by joint.</summary>
    public IEnumerable<IGrouping<Joint, PositionBook>> Joints =>
        ReleaseRules.PositionsOf(state, now).Select(state.Of).GroupBy(book => book.Position.Joint);

    /// <summary>True when there is nothing against the position but a missing witness: it is shown as tightened.</summary>
    public bool IsTight(PositionBook book) =>
        book.Holds.IsEmpty && !state.DoubtsOn(book, now.Tool).Any()
        && book.Fitting == Fitting.HandTight && state.IsAtTorque(book);

    /// <summary>The newest final pulls of a position.</summary>
    public static IReadOnlyList<Pull> FinalPulls(PositionBook book) =>
        book.Last is { } last ? [.. book.Newest(last.Fact.Spec.Stages)] : [];

    /// <summary>The group a pull was made for.</summary>
    public JointGroup GroupOf(Pull pull) => now.Placed(state.Jobs[pull.Fact.Job]).Procedure.Group(pull.Fact.Group);

    /// <summary>The gravest risk class that a job of this car gives the position; A where no job knows it.</summary>
    public RiskClass RiskOf(JointPosition position) => state.Jobs.Values
        .SelectMany(job => now.Placed(job).Groups).Where(group => group.Joint == position.Joint)
        .Select(group => (RiskClass?)group.Group.Risk).Min() ?? RiskClass.A;

    /// <summary>True when a version was issued after an entry.</summary>
    public bool IsToldSince(long number) => state.Summaries.Exists(summary => summary.Number > number);

    public string KindName(string key) => now.Register.Kinds.TryGetValue(key, out var kind) ? kind.Name : key;

    /// <summary>The joint as people say it: "wheel nut, front-left".</summary>
    public string Name(Joint joint) => $"{KindName(joint.Key)}, {joint.Place}";

    /// <summary>The position as people say it: "wheel nut, front-left, no. 3".</summary>
    public string Name(JointPosition position) => string.Create(CultureInfo.InvariantCulture, $"{Name(position.Joint)}, no. {position.Number}");

    public string DayWords(DateTime at) => Words(facts.Day(at));

    public static string Words(DateOnly day) => WallTime.Day(day);

    /// <summary>A distance in the unit of the car.</summary>
    public string Km(decimal km) => $"{Figure(km)} {now.Distance.Symbol()}";

    /// <summary>From one distance to another: "48,260 and 48,310 km".</summary>
    public string Km(decimal from, decimal to) => $"{Figure(from)} and {Km(to)}";

    private string Figure(decimal km) => string.Create(CultureInfo.InvariantCulture, $"{km / now.Distance.Kilometres():#,##0.#}");

    public static string Count(int count, string one) => string.Create(CultureInfo.InvariantCulture, $"{count} {one}{(count == 1 ? "" : "s")}");

    /// <summary>Steps in words, each once with its places.</summary>
    public static IReadOnlyList<string> StepWords(IEnumerable<(StepInstance Step, bool NotApplicable)> steps) =>
    [
        .. from found in steps
           group found by (found.Step.Step.Title, found.NotApplicable) into same
           let places = string.Join(", ", same.Select(found => found.Step.Place).OfType<string>())
           select same.Key.Title + (places.Length > 0 ? $": {places}" : "") + (same.Key.NotApplicable ? " (not applicable)" : ""),
    ];

    /// <summary>A result or setting as people say it.</summary>
    public string ResultName(string name) => Now.Register.NameOfResult(name);
}
