using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

// What on the car a command is about.
internal static partial class Choices
{
    /// <summary>A release by which the car may go now; null when there is none.</summary>
    public static ReleaseKind? Standing(CarAtWork car) => car.State.ReleaseHistory
        .FindLast(release => car.State.StandingOf(car.As(TestPerson.Lee), release.Fact.Kind).IsGood)?.Fact.Kind;

    private static ReleaseKind Given(CarAtWork car, int number) => car.State.ReleaseHistory.IsEmpty || number % 6 == 0
        ? Kinds[number % Kinds.Length]
        : car.State.ReleaseHistory[^1].Fact.Kind;

    private static IReadOnlyList<long> Awaiting(CarAtWork car, Move move)
    {
        var waiting = car.State.Positions.Values.SelectMany(book => book.Pulls).Where(pull => pull is { AwaitsCountersign: true, CountersignedBy: null })
            .Select(pull => pull.Number).Concat(car.State.AwaitingCountersign(car.As(TestPerson.Lee)).Select(step => step.Sign.Number)).Order().ToList();
        return move.B % 6 == 0 ? [.. waiting, 1 + (move.A % (car.Last + 1))] : waiting;
    }

    private static Command? End(CarAtWork car, Move move) => Job(car, move.A)?.Id is not { } job ? null : (move.C % 6) switch
    {
        0 => new EndJob(job, CarAtWork.Shown),
        1 => new PutJobOnHold(job, CarAtWork.Reason),
        2 => new ResumeJob(job, CarAtWork.Shown),
        3 => new CancelJob(job, CarAtWork.Reason, CarAtWork.Shown),
        _ => new TakeJobBack(job, CarAtWork.Reason, CarAtWork.Shown),
    };

    public static JobBook? Job(CarAtWork car, int number) => car.State.Jobs.IsEmpty
        ? null
        : car.State.Jobs.Values.OrderBy(job => job.Number).ElementAt(number % car.State.Jobs.Count);

    private static (JobBook Job, GroupInstance Group)? Group(CarAtWork car, int number)
    {
        if (Job(car, number) is not { } job)
        {
            return null;
        }

        var groups = car.Placed(job).Groups;
        return (job, groups.ElementAt(number / 7 % groups.Count));
    }

    // Mostly a joint whose re-torque is due, where there is one.
    private static (JobBook Job, GroupInstance Group)? Due(CarAtWork car, int number) =>
        number % 4 == 0 || car.State.Positions.Values.FirstOrDefault(book => car.Shows(book.Position) == PositionState.Due)?.Last is not { Fact: var fact }
            ? null
            : (car.State.Jobs[fact.Job], car.Placed(fact.Job).Group(fact.Group, fact.Position.Place)!);

    private static IReadOnlyList<JointPosition> Some(GroupInstance group, int number) =>
        number % 2 == 0 ? [.. group.Positions] : [group.Positions.ElementAt(number / 2 % group.Count)];

    private static JointPosition Position(CarAtWork car, int number)
    {
        var touched = car.State.Positions.Keys.OrderBy(at => at.ToString(), StringComparer.Ordinal).ToList();
        var all = car.Register.Kinds.Values.SelectMany(kind => kind.AllPositions()).ToList();
        return touched.Count > 0 && number % 4 != 0 ? touched[number % touched.Count] : all[number % all.Count];
    }

    private static JointPosition Troubled(CarAtWork car, int number)
    {
        var troubled = car.State.Positions.Keys.Where(at => car.Shows(at) is PositionState.Held or PositionState.Doubted)
            .OrderBy(at => at.ToString(), StringComparer.Ordinal).ToList();
        return troubled.Count > 0 && number % 6 != 0 ? troubled[number % troubled.Count] : Position(car, number);
    }

    private static long Target(CarAtWork car, int number)
    {
        var targets = car.State.Correctables.Keys.Order().ToList();
        return targets.Count == 0 ? 1 : targets[^(1 + (number % Math.Min(6, targets.Count)))];
    }

    private static long? Waiting(CarAtWork car) =>
        car.State.Corrections.Values.Where(correction => !correction.Confirmed).Max(correction => (long?)correction.Number);
}
