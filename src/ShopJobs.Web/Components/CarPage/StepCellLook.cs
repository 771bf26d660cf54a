using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>How one step at one place is drawn and said on the car's page.</summary>
/// <param name="Finished">Who said that it is done and did not sign it yet; null where nobody did.</param>
/// <param name="Nut">The joint it works on or opens, by its worst fastener; null where it has none.</param>
/// <param name="Short">What stands under the drawing; empty where the drawing says all.</param>
/// <param name="Note">What has to be read beside its row; null where nothing has.</param>
/// <param name="After">What it waits for, in words; null where it may begin.</param>
public sealed record StepCellLook(
    StepInstance Step, StepStanding Standing, FinishedStep? Finished, JointLook? Nut, string Short, string? Note, string? After)
{
    public bool IsSigned => Standing == StepStanding.Signed;

    /// <summary>Signed once and not so now, or waiting for another's hand: drawn so that it is seen.</summary>
    public bool IsAsking => Standing is StepStanding.Void or StepStanding.ToReconfirm or StepStanding.AwaitsCountersign;

    /// <summary>All of it for whoever does not see the drawing.</summary>
    public string Said => string.Join(", ", new[] { Step.Title() + ": " + (Note ?? Standing.Words()), Nut is null || IsSigned ? null : $"its fasteners {Nut.Word}", After }.OfType<string>());

    /// <summary>Looks at a step of a job.</summary>
    /// <param name="seen">Every joint of the car.</param>
    /// <param name="names">People by id.</param>
    public static StepCellLook Of(CarReading reading, JobBook job, StepInstance step, IReadOnlyList<JointSeen> seen, IReadOnlyDictionary<PersonId, string> names, ShopClock clock)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(clock);
        var placed = reading.Placed(job);
        var standing = reading.State.StandingOf(job, placed, step);
        var finished = reading.State.FinishedOf(job, placed, step);
        var waits = standing != StepStanding.Signed && job.IsAtWork && reading.HoldsBeforeStart(job, step) is [var first, ..] ? first : null;
        var progress = StepProgress.On(reading.State, step);
        var note = finished is not null ? $"done, not signed, {By(finished.Person, finished.At)}"
            : standing == StepStanding.NotSigned ? waits is null or { Unsigned: not null } ? null : $"waits: {reading.Now.Say(waits).Words}"
            : standing == StepStanding.Signed ? job.SignOffs[step.Id].Fact.NotApplicable ? $"not applicable, {Signed()}" : $"signed, {Signed()}"
            : $"{standing.Words()}; was signed, {Signed()}";
        return new StepCellLook(step, standing, finished, NutOf(reading, step, seen), ShortOf(standing, finished, progress), note, waits?.Unsigned is { } before ? $"after: {before.Step.Title()}" : null);

        string Signed() => By(job.SignOffs[step.Id].Person, job.SignOffs[step.Id].At);

        string By(PersonId person, DateTime at) => $"{names.GetValueOrDefault(person, "somebody")} {clock.Words(at)}";
    }

    private static string ShortOf(StepStanding standing, FinishedStep? finished, StepProgress progress) => standing switch
    {
        StepStanding.Signed => "",
        _ when finished is not null => "done",
        StepStanding.Void => "void",
        StepStanding.ToReconfirm => "confirm",
        StepStanding.AwaitsCountersign => "countersign",
        _ => progress.IsBegun ? string.Create(CultureInfo.InvariantCulture, $"{progress.Done}/{progress.Of}") : "",
    };

    private static JointLook? NutOf(CarReading reading, StepInstance step, IReadOnlyList<JointSeen> seen)
    {
        var joints = step.Work.Where(work => !work.Instance.Group.Temporary).Select(work => work.Instance.Joint)
            .Concat(seen.Where(joint => step.Step.Opens.Contains(joint.Joint.Key) && (step.Place is null || joint.Joint.Place == step.Place)).Select(joint => joint.Joint))
            .ToHashSet();
        return seen.Where(joint => joints.Contains(joint.Joint)).Select(joint => JointLook.Of(reading, joint))
            .OrderBy(look => look.State == PositionState.AsFound).ThenBy(look => look.State).FirstOrDefault();
    }
}
