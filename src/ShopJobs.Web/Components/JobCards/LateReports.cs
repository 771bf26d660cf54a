using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>A card as late reports of its doer: the very commands that a tablet sends, with the card, its cycle and the session of its moment.</summary>
internal static class LateReports
{
    /// <summary>The reports in the order in which the work is done.</summary>
    public static IEnumerable<CardLine> Of(CardFacts facts, TypedCard typed)
    {
        var source = new Source(facts);
        if (typed.Opened)
        {
            yield return source.Opening("opened", PrintedCard.OpenedBy(facts.Reading, facts.Job, facts.Step));
        }

        foreach (var instance in facts.Step.Work.Select(work => work.Instance).Where(instance => typed.Of(instance).Opened))
        {
            yield return source.Opening($"opened-{instance.Group.Id}-{instance.Place}", [.. instance.Positions]);
        }

        if (typed.Conditions.Count > 0)
        {
            yield return new CardLine("car", $"Car: {string.Join(", ", typed.Conditions.Select(ConditionWords.Of))}", _ => new DeclareCondition([.. typed.Conditions])
            {
                Places = [.. facts.Step.Work.Select(work => work.Instance.Place).Append(facts.Step.Place).OfType<string>().Distinct()],
                MadeIn = source.Session,
            });
        }

        foreach (var work in facts.Step.Work)
        {
            foreach (var line in source.Group(work, typed.Of(work.Instance)))
            {
                yield return line;
            }
        }
    }

    private sealed class Source(CardFacts facts)
    {
        private readonly OnPaper paper = new(facts.Card!, facts.Moment!.Value);

        // In none is another one: nobody knows what happened since.
        public SessionId Session => facts.Session ?? default;

        public CardLine Opening(string key, IReadOnlyList<JointPosition> positions) => new(
            key, $"Opened {facts.Reading.Now.Name(positions[0].Joint)}",
            reading => new OpenPositions(positions, facts.Job.Id, null) { Cycles = Cycles(reading, positions), OnPaper = paper });

        public IEnumerable<CardLine> Group(GroupWork work, TypedGroup typed)
        {
            var instance = work.Instance;
            var name = StepScene.NameOf(instance);
            IReadOnlyList<JointPosition> all = [.. instance.Positions];
            if (typed.New)
            {
                yield return new CardLine($"new-{instance.Group.Id}-{instance.Place}", $"{name}: new hardware", reading =>
                    new FitNew(facts.Job.Id, instance.Group.Id, all, Lot(typed)) { Cycles = Cycles(reading, all), OnPaper = paper, MadeIn = Session });
            }

            if (typed.ByHand)
            {
                yield return new CardLine($"hand-{instance.Group.Id}-{instance.Place}", $"{name}: run down by hand", reading =>
                    new HandTighten(facts.Job.Id, instance.Group.Id, all, []) { Cycles = Cycles(reading, all), OnPaper = paper, MadeIn = Session });
            }

            foreach (var stage in work.Stages.Select(number => instance.Group.Stages[number - 1]))
            {
                var done = typed.Stages[stage.Number];
                foreach (var visit in Enumerable.Range(0, stage.Visits.Count).Where(done.IsDone))
                {
                    var position = instance.Joint.At(stage.Visits[visit]);
                    yield return new CardLine(CardFields.Cell(instance, stage, visit), $"{facts.Reading.Now.Name(position)}, stage {stage.Number}", reading => Pull(reading, instance, stage, done, visit, position));
                }
            }
        }

        private RecordTorque Pull(CarReading reading, GroupInstance instance, Stage stage, TypedStage typed, int visit, JointPosition position)
        {
            var tool = CardFields.ToolOf(reading, typed)!;
            var kind = tool.Kind.Evidence(stage);
            var value = kind switch
            {
                TorqueKind.AngleTurned => (EnteredTorque?)null,
                TorqueKind.SettingConfirmed => Torque(typed.Setting, tool.Unit),
                _ => Torque(typed.Values[visit], tool.Unit),
            };
            return new RecordTorque(facts.Job.Id, instance.Group.Id, position, Cycle(reading, position), stage.Number, visit, kind, value, CardFields.IdOf(typed)!.Value, [])
            {
                AngleDegrees = kind == TorqueKind.AngleTurned ? Turn.Read(typed.Values[visit]) : null,
                RunDown = typed.RunDowns[visit].Trim().Length > 0 ? Torque(typed.RunDowns[visit], TorqueUnit.NewtonMetre) : null,
                OnPaper = paper,
                MadeIn = Session,
            };
        }

        private int Cycle(CarReading reading, JointPosition position) => PaperMoments.CycleOn(reading.State, position, facts.Number!.Value, facts.Card!);

        private List<int> Cycles(CarReading reading, IReadOnlyList<JointPosition> positions) => [.. positions.Select(position => Cycle(reading, position))];
    }

    private static string? Lot(TypedGroup typed) => typed.Lot.Trim() is { Length: > 0 } lot ? lot : null;

    // The form was checked before.
    private static EnteredTorque Torque(string typed, TorqueUnit unit) =>
        EnteredTorque.TryParse(typed, unit, out var value, out var problem) ? value : throw new FormatException(problem);
}
