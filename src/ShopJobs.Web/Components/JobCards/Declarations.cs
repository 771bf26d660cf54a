using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>A card of which nobody answers for the work, or with evidence missing: what it says is kept in words and does not count.</summary>
internal static class Declarations
{
    /// <summary>The declarations, and the openings: that something was taken off is a report of anybody.</summary>
    public static IEnumerable<CardLine> Of(CardFacts facts, TypedCard typed)
    {
        var opened = (typed.Opened ? PrintedCard.OpenedBy(facts.Reading, facts.Job, facts.Step) : [])
            .Concat(facts.Step.Work.Where(work => typed.Of(work.Instance).Opened).SelectMany(work => work.Instance.Positions)).Distinct().ToList();
        if (opened.Count > 0 && facts is { Number: { } number, Card: { } card })
        {
            yield return new CardLine("opened", $"Opened {string.Join(", ", opened.Select(position => position.Joint).Distinct().Select(facts.Reading.Now.Name))}", reading =>
                new OpenPositions(opened, facts.Job.Id, null) { Cycles = [.. opened.Select(position => PaperMoments.CycleOn(reading.State, position, number, card))] });
        }

        foreach (var work in facts.Step.Work)
        {
            var (instance, group) = (work.Instance, typed.Of(work.Instance));
            var name = StepScene.NameOf(instance);
            if (group.ByHand)
            {
                yield return Declared(facts, typed, instance, 0, [.. instance.Positions], $"{name}: run down by hand{(group.New ? $"; new hardware{Lot(group)}" : "")}");
            }

            foreach (var stage in work.Stages.Select(one => instance.Group.Stages[one - 1]).Where(stage => !group.Stages[stage.Number].IsEmpty))
            {
                var done = group.Stages[stage.Number];
                var visits = Enumerable.Range(0, stage.Visits.Count).Where(done.IsDone).ToList();
                var cells = string.Join(", ", visits.Select(visit => done.Values[visit].Trim() is { Length: > 0 } value ? $"{stage.Visits[visit]} {value}" : $"{stage.Visits[visit]}"));
                var tool = CardFields.ToolOf(facts.Reading, done) is { } named
                    ? $"{named.Name}{(done.Setting.Trim().Length > 0 ? $", set to {done.Setting.Trim()} {Domain.Fasteners.TorqueUnits.Symbol(named.Unit)}" : "")}"
                    : "not given";
                yield return Declared(
                    facts, typed, instance, stage.Number, [.. visits.Select(visit => instance.Joint.At(stage.Visits[visit])).Distinct()],
                    $"{name}, stage {stage.Number}, {stage.Amount()}: {cells}. Tool: {tool}");
            }
        }
    }

    private static CardLine Declared(CardFacts facts, TypedCard typed, GroupInstance instance, int stage, IReadOnlyList<JointPosition> positions, string what)
    {
        var doer = Guid.TryParse(typed.DoneBy, out var id) && typed.IsOwn != true ? new PersonId(id) : (PersonId?)null;
        var text = NewContent.Of(Encoding.UTF8.GetBytes(Paper(facts, typed, doer, what)));
        return new CardLine(FormattableString.Invariant($"declared-{instance.Group.Id}-{instance.Place}-{stage}"), what, _ =>
            new DeclareFromPaper(facts.Job.Id, instance.Group.Id, positions, stage, doer, text.Digest))
        {
            Text = text,
        };
    }

    private static string Paper(CardFacts facts, TypedCard typed, PersonId? doer, string what)
    {
        var by = doer is { } person ? facts.Names.GetValueOrDefault(person, "somebody") : typed.IsOwn == true ? "who enters it" : "not named";
        var when = facts.Moment is { } at ? WallTime.Minute(facts.Reading.Now.OnTheWall(at)) : "not given";
        var car = typed.Conditions.Count > 0 ? string.Join(", ", typed.Conditions.Select(ConditionWords.Of)) : "not given";
        return FormattableString.Invariant($"Card {facts.Card ?? "without a number"}. {what}. Done by: {by}. When: {when}. Car: {car}.");
    }

    private static string Lot(TypedGroup typed) => typed.Lot.Trim() is { Length: > 0 } lot ? $", lot {lot}" : "";
}
