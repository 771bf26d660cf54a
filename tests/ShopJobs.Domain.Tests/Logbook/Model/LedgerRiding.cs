using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Logbook.Model;

// Rule 1: what a joint rides on. Rule 13: how the car stands.
internal sealed partial class Ledger
{
    private readonly Remembered<(JointPosition, bool), bool> carried = new();

    private JointPosition? RiddenBy(JointPosition position) =>
        register.Kinds[position.Key].RidesOn is { } key && register.Kinds.TryGetValue(key, out var kind) && kind.AllPositions().Contains(position with { Key = key })
            ? position with { Key = key }
            : null;

    /// <summary>What it rides on is as found, or counts with every cure named for it signed; a temporary joint may ride on a hand-tight one.</summary>
    private bool IsCarried(JointPosition position, bool temporary) => carried.Of((position, temporary), _ =>
        RiddenBy(position) is not { } ridden
        || (IsAsFound(ridden) && HoldsOn(ridden).Count == 0)
        || (temporary && WhatIsOn(ridden) == On.Run && HoldsOn(ridden).Count == 0)
        || (ProblemsOf(ridden, null, null, null).Count == 0 && !IsCureUnsigned(ridden)));

    /// <summary>A joint before this one is not off.</summary>
    private bool IsBarred(JointPosition position) => register.Kinds[position.Key].Behind is { } key && register.Kinds.TryGetValue(key, out var before)
        && before.AllPositions().Any(at => at.Place == position.Place && (WhatIsOn(at) != On.Nothing || IsOn(at)));

    private bool IsUnfinishedBehind(JointPosition position) => TouchedBehind(position).Any(at => ProblemsOf(at, null, null, null).Count > 0);

    private bool IsLooseBehind(JointPosition position) => TouchedBehind(position).Any(at => !IsAtTorque(at));

    private IEnumerable<JointPosition> TouchedBehind(JointPosition position) => register.Kinds.Values.Where(kind => kind.Behind == position.Key)
        .SelectMany(kind => kind.AllPositions()).Where(at => at.Place == position.Place && !(IsAsFound(at) && HoldsOn(at).Count == 0));

    private bool IsCureUnsigned(JointPosition ridden) => InForce(ridden) is { } id && jobs[id].Steps.Any(step =>
        step.Rules.WaitsFor.OfType<WaitsFor.ForCure>().Any(wait => jobs[id].GroupsAt(wait.Group, step.Place).Any(group => group.Joint == ridden.Joint))
        && StandingOf(jobs[id], step) != StepStanding.Signed);

    /// <summary>
    /// The newest declaration of an aspect, at its place where the register says so: it ends at a release, when a job goes on after a hold, at its age, and at an opening
    /// that it depends on. 0 when it says something else, or has ended.
    /// </summary>
    private long DeclaredBy(CarCondition condition, string place, DateTime now)
    {
        var rules = register.Aspects.GetValueOrDefault(condition.Aspect);
        var ofPlace = rules?.OfPlace == true;
        var said = lines.LastOrDefault(line => line.Entry is CarConditionDeclared fact
            && fact.Conditions.Any(one => one.Aspect == condition.Aspect)
            && (!ofPlace || fact.Places?.Contains(place) == true));
        if (said is null || IsVoid(said.Number) || !((CarConditionDeclared)said.Entry).Conditions.Contains(condition))
        {
            return 0;
        }

        var ended = lines.Skip((int)said.Number).Any(line => line.Entry is Released or JobResumed or Left
            || line.Opens.Any(at => rules?.EndsAt.Contains(at.Key) == true && (!ofPlace || at.Place == place)));
        return ended || (rules?.LastsHours is { } hours && clock.MayHavePassed(said, TimeSpan.FromHours((double)hours), now)) ? 0 : said.Number;
    }
}
