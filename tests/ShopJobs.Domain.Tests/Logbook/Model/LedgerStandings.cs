using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 12 and 14: what became of a release, and when its re-torque is due.
internal sealed partial class Ledger
{
    private Line? NewestRelease(ReleaseKind kind) => lines.LastOrDefault(line => line.Entry is Released fact && fact.Kind == kind);

    private ReleaseWithdrawn? WithdrawalOf(long release) =>
        lines.Select(line => line.Entry).OfType<ReleaseWithdrawn>().FirstOrDefault(fact => fact.Release == release);

    /// <summary>How the newest release of a kind stands: opening or a pull ends it, anything else by which it could not be given suspends it.</summary>
    public ReleaseStandingKind StandingOf(ReleaseKind kind, DateOnly today)
    {
        if (NewestRelease(kind) is not { } release)
        {
            return ReleaseStandingKind.NotGiven;
        }

        if (WithdrawalOf(release.Number) is not null)
        {
            return ReleaseStandingKind.Withdrawn;
        }

        var after = lines.Skip((int)release.Number).ToList();
        if (IsBack(release.Number) || after.Exists(line => line.Entry is TorqueRecorded || line.Opens.Count + line.Reopens.Count > 0))
        {
            return ReleaseStandingKind.Ended;
        }

        var since = after.LastOrDefault(line => line.Entry is ReleaseUpheld fact && fact.Release == release.Number) ?? release;
        return AgainstStanding(release, today).Any() || after.Exists(line => line.Number > since.Number && Suspends(line)) || WasDoubtedSince(since.At)
            ? ReleaseStandingKind.Suspended
            : ((Released)release.Entry).LapsesOn?.AddDays(-(int)release.Off.TotalDays) < today || LastKm > ((Released)release.Entry).LapsesAtKm ? ReleaseStandingKind.Lapsed : ReleaseStandingKind.Stands;
    }

    /// <summary>What speaks against it by the rules of a release; a job put on the car later speaks against the next one alone.</summary>
    private IEnumerable<Reason> AgainstStanding(Line release, DateOnly today) =>
        RulesOf(((Released)release.Entry).Kind, accepted: true, null, today, job => StartOf(job) < release.Number, release.Without.Contains);

    private bool Suspends(Line line) => line.Late.Count > 0 || line.Entry switch
    {
        Corrected or PositionHeld or Witnessed { Accepted: false } => true,
        HandTightened => line.Problems.Contains(HoldReason.NotOpened),
        CarMoved or Left => line.Against.Count > 0,
        Settled => line.Problems is not ([] or [HoldReason.ReTorqueEarly]),
        ResultRecorded => line.Undoes.Count + line.Problems.Count > 0,
        JobResumed => line.TakesBack.Count > 0,
        _ => LooksFallenBy(line).Any(),
    };

    /// <summary>Looks that fall because whoever looked works on the joint.</summary>
    private IEnumerable<long> LooksFallenBy(Line line) =>
        from look in lines.Take((int)line.Number - 1)
        where look.Entry is Witnessed { Accepted: true } && look.Entry is Witnessed fact && WorkedAfter(fact.Joint, look.Person, look.Number) == line.Number
        where look.About.Any(pull => !line.Opens.Contains(Fact(At(pull)).Position) && Upto(line.Number).LookOn(look, pull).FellAt == line.Number)
        select look.Number;

    private bool WasDoubtedSince(DateTime since) => register.Kinds.Values.SelectMany(kind => kind.AllPositions()).SelectMany(ToolWorkOn).Concat(Measured)
        .Any(done => Tool(done.Tool).EverDoubtedOn(done.Line.Day, done.Line.At).Any(raised => raised > since));

    private IEnumerable<(Line Line, ToolId Tool)> Measured => lines.Select(line => line.Entry).OfType<ResultRecorded>().Select(fact => fact.Name).Distinct()
        .Select(name => ResultOf(name)!).Where(line => ((ResultRecorded)line.Entry).Tool is not null).Select(line => (line, ((ResultRecorded)line.Entry).Tool!.Value));

    private IEnumerable<Reason> OfUpholding(IReadOnlySet<Right> rights, UpholdRelease uphold, DateOnly today)
    {
        var suspended = StandingOf(uphold.Kind, today) == ReleaseStandingKind.Suspended;
        return Those((HoldReason.NoRight, !rights.Contains(Right.Lead)), (HoldReason.NotSuspended, !suspended)).Select(why => new Reason(why))
            .Concat(suspended ? AgainstStanding(NewestRelease(uphold.Kind)!, today) : []);
    }

    private IEnumerable<Reason> OfWithdrawing(IReadOnlySet<Right> rights, WithdrawRelease withdraw) => Those(
        (HoldReason.NoRight, !rights.Contains(Right.Release)),
        (HoldReason.NoSuchRelease, NewestRelease(withdraw.Kind) is not { } release || WithdrawalOf(release.Number) is not null)).Select(why => new Reason(why));

    /// <summary>The first release after a position's final pull under which the car may have been driven.</summary>
    private Line? FirstDrive(JointPosition position) => LastPull(position) is { } last ? FirstDriveAfter(last.Number) : null;

    private Line? FirstDriveAfter(long number) => lines.Skip((int)number).FirstOrDefault(line =>
        line.Entry is Released { Kind: not ReleaseKind.Move } && WithdrawalOf(line.Number) is not { Driven: false });

    private bool DrivenSince(long number) => FirstDriveAfter(number) is not null;

    private bool IsOverdue(JointPosition position, decimal? odometer, DateOnly today) =>
        FirstDrive(position) is { Entry: Released { OdometerKm: { } at } } drive && GroupOf(LastPull(position)!).Rules.ReTorque is { } rule
        && (odometer > at + (rule.BeforeKm ?? rule.AfterKm) || IsPastLimit(position, rule, drive, today.AddDays(-1)));

    /// <summary>Below the distance asked nothing settles; at the date limit the lead settles it early.</summary>
    private bool IsTooEarly(JointPosition position, decimal? odometer, DateOnly today, IReadOnlySet<Right> rights) =>
        FirstDrive(position) is { Entry: Released { OdometerKm: { } at } } drive && GroupOf(LastPull(position)!).Rules.ReTorque is { } rule
        && odometer < at + rule.AfterKm && !(rights.Contains(Right.Lead) && clock.Doubt is null && IsPastLimit(position, rule, drive, today));

    private bool IsPastLimit(JointPosition position, ReTorque rule, Line drive, DateOnly today) =>
        rule.WithinDays is { } days && today >= DateOnly.FromDateTime((IntervalOf(position, drive) ?? drive).At).AddDays(days);

    // The lead's new interval, where it was given for the pull and the drive that count now.
    private Line? IntervalOf(JointPosition position, Line drive) =>
        lines.LastOrDefault(line => line.Entry is ReTorqueExtended fact && fact.Positions.Contains(position)) is { } given && Upto(given.Number) is var then
            && then.LastPull(position)?.Number == LastPull(position)?.Number && then.FirstDrive(position)?.Number == drive.Number
            ? given
            : null;
}
