using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Desk;
using Ends = ShopJobs.Domain.Logbook.JobEnds;

namespace ShopJobs.Web.Components.JobEnds;

/// <summary>What ending, holding, resuming or giving up a job means, in plain words: said before it is done, and signed as it was said.</summary>
public sealed class JobEndLines(CarReading reading, JobBook job, IReadOnlyDictionary<PersonId, string> people, JobStateWords states)
{
    private readonly EntryNames names = JointLineWords.NamesOf(reading, people);
    private readonly PlacedProcedure placed = reading.Placed(job);

    /// <summary>The job by its procedure and places.</summary>
    public string Title => $"{placed.Procedure.Code} {placed.Procedure.Title}, {string.Join(", ", job.Fact.Places)}";

    /// <summary>Why it can't be done now; empty where it can.</summary>
    public IReadOnlyList<HoldPoint> Against(JobAct act) => act == JobAct.End ? Ends.AgainstEnding(reading.State, reading.Now, job) : [];

    /// <summary>What it means.</summary>
    public IReadOnlyList<string> Of(JobAct act) => act switch
    {
        JobAct.End =>
        [
            "Every step is signed.",
            "The job ends: nothing more is recorded under it. The records of its joints stay as they are.",
            "The car is released on its release page, as always.",
        ],
        JobAct.Hold =>
        [
            "The job rests until the lead resumes it. What is reported of it meanwhile is recorded and does not count.",
            "It holds the releases as before: what is open stays open. A cure goes on by the clock.",
            .. WhenResumed("When it is resumed"),
        ],
        JobAct.Resume => [$"It was {states.Of(job)}.", .. WhenResumed("From here"), .. Older, "Look the car over before you sign."],
        JobAct.Cancel => [.. Falling("fall: they need not be done"), .. Unfinished("No joint of it is left open.", "Not closed: it stays as it is, and holds the releases until another job closes it")],
        _ =>
        [
            "The job was never meant for this car.",
            .. Left.Count > 0
                ? [.. Unfinished("", "It opened, and nobody has closed"), "Close each as the steps say or by another job. Where one was never opened, take that entry back in the logbook, and a second person confirms it. Until then its steps ask."]
                : Falling("fall at once: it opened nothing that is not closed"),
        ],
    };

    private IReadOnlyList<JointPosition> Left => Ends.LeftOpen(reading.State, reading.Now, job);

    private IReadOnlyList<string> Older => reading.State.Results.Values.Where(result => result.Fact.Job == job.Id && result.VoidBy == 0)
        .OrderBy(result => result.Number).Select(result => WallTime.Day(reading.Now.OnTheWall(result.At)) is var day
            ? $"“{result.Fact.Name}” was recorded on {day}, before the hold: where something may have changed since, do it again."
            : "").ToList();

    private IEnumerable<string> WhenResumed(string begin)
    {
        yield return $"{begin} the car's condition is said again.";
        var again = Ends.RunDownAgainAt(reading.State, job);
        yield return again.Count == 0
            ? $"{begin} nothing has to be run down again: no joint of it is half done."
            : $"{begin} these are run down again, backed off first where they were pulled: {names.Positions(again)}.";
        yield return "What is at torque, and what was signed, stays valid.";
    }

    private IEnumerable<string> Falling(string what) =>
        placed.Steps.Count(step => reading.State.StandingOf(job, placed, step) != StepStanding.Signed) is > 0 and var left
            ? [string.Create(CultureInfo.InvariantCulture, $"{left} {(left == 1 ? "step" : "steps")} without a signature {what}.")]
            : ["Every step is signed."];

    private IEnumerable<string> Unfinished(string none, string some)
    {
        if (Left.Count > 0)
        {
            yield return $"{some}: {names.Positions(Left)}.";
        }
        else if (none.Length > 0)
        {
            yield return none;
        }
    }
}
