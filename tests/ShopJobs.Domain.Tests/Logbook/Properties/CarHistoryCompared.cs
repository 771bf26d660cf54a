using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Model;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

// The car as the product has it and as the model has it, and how that is told.
internal sealed partial class CarHistory
{
    private static Reason Of(HoldPoint point) => point.Reason is HoldReason.Held or HoldReason.ToolInDoubt or HoldReason.NotAtStage
        or HoldReason.NotWitnessed or HoldReason.OtherSpecification or HoldReason.NotRunDown or HoldReason.RidesOnLoose or HoldReason.UnfinishedBehind ? new(point.Reason, point.Position) : new(point.Reason);

    private string? Compare()
    {
        if (ledger is null)
        {
            return null;
        }

        var now = Car.As(TestPerson.Lee);
        foreach (var position in Positions)
        {
            var (shows, model) = (Car.Shows(position), ledger.Shows(position));
            if (shows != model)
            {
                return $"{position} shows {shows}, the model says {model}";
            }

            var counts = Car.Rules.Position.All(rule => !rule.Find(new PositionQuestion(Car.State, now, Car.State.Of(position), null, null, null)).Any());
            if (counts != ledger.Counts(position))
            {
                return $"{position} {(counts ? "counts" : "does not count")}, the model says otherwise";
            }
        }

        foreach (var job in Car.State.Jobs.Values)
        {
            foreach (var step in Car.Placed(job).Steps)
            {
                var standing = Car.State.StandingOf(job, Car.Placed(job), step);
                var model = ledger.StandingOf(readings[job.Id], readings[job.Id].Step(step.Id)!);
                if (standing != model)
                {
                    return $"{step.Id} is {standing}, the model says {model}";
                }

                var finished = Car.State.FinishedOf(job, Car.Placed(job), step)?.Number;
                var word = ledger.Finished(readings[job.Id], readings[job.Id].Step(step.Id)!)?.Number;
                if (finished != word)
                {
                    return $"{step.Id} is done by entry {finished}, the model says {word}";
                }
            }
        }

        foreach (var kind in Enum.GetValues<ReleaseKind>())
        {
            var (standing, model) = (Car.State.StandingOf(now, kind).Kind, ledger.StandingOf(kind, DateOnly.FromDateTime(Car.True)));
            if (standing != model)
            {
                return $"the release to {kind} is {standing}, the model says {model}";
            }
        }

        var undone = Car.State.Undone.Keys.ToHashSet();
        return undone.SetEquals(ledger.UndoneNames) ? null : $"undone are [{string.Join(", ", undone)}], the model says [{string.Join(", ", ledger.UndoneNames)}]";
    }

    private string Describe(Verdict verdict) => verdict is Verdict.Refused refused
        ? $"refused [{string.Join(", ", refused.Reasons.Select(Of).Distinct())}]"
        : $"{Car.State.Number} [{string.Join(", ", Car.Book.Skip(Car.Book.Count - ((Verdict.Accepted)verdict).Entries.Count).SelectMany(line => ProblemsOf(line.Entry)))}]";
}
