using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.JobCards;

/// <summary>What is wrong with a typed card, field by field, and which evidence it lacks.</summary>
internal static class CardCheck
{
    /// <summary>What is wrong, by the id of its field.</summary>
    public static IReadOnlyDictionary<string, string> Wrong(CardFacts facts, TypedCard typed)
    {
        var wrong = new Dictionary<string, string>();
        if (typed.Number.Trim().Length > 0 && facts.PrintedAt is null)
        {
            wrong["card-number"] = "No card of this job has this number. Read it again at the head of the card.";
        }

        if (typed.IsOwn is null)
        {
            wrong["card-own"] = "Say whose work it is.";
        }

        if (typed.Time.Trim().Length > 0 && CardTime.Read(typed.Time) is null)
        {
            wrong["card-time"] = "Write the time like 14:20.";
        }
        else if (facts.Moment is { } at && at > facts.Reading.Now.Shows)
        {
            wrong["card-time"] = "That is still to come. Read date and time again.";
        }
        else if (facts is { Moment: { } moment, PrintedAt: { } printed } && moment < CardTime.Minute(printed))
        {
            wrong["card-time"] = "That is before the card was printed. Read date and time again.";
        }
        else if (facts.Moment is { } minute && PaperMoments.Against(facts.Reading.State, Touched(facts, typed), minute, facts.Reading.Now) is { } against)
        {
            wrong["card-time"] = facts.Reading.Now.Say(against).Words + ". Read date and time again; where they are right, leave the time empty: then it is declared.";
        }

        foreach (var (instance, stage, group) in CardFields.Stages(facts.Step, typed))
        {
            foreach (var visit in Enumerable.Range(0, stage.Visits.Count).Where(group.Stages[stage.Number].IsDone))
            {
                if (OfCell(facts, instance, stage, group.Stages[stage.Number], visit) is { } words)
                {
                    wrong[CardFields.Cell(instance, stage, visit)] = words;
                }
            }

            if (group.Stages[stage.Number] is { IsEmpty: true, Setting: var setting } && setting.Trim().Length > 0)
            {
                wrong[CardFields.Setting(instance, stage)] = "Tick the fasteners that were pulled at it, or empty this field.";
            }

            if (group.Stages[stage.Number] is { IsEmpty: false } done && CardFields.ToolOf(facts.Reading, done) is { } tool && tool.Kind.Evidence(stage) == TorqueKind.SettingConfirmed
                && !EnteredTorque.TryParse(done.Setting, tool.Unit, out _, out var problem))
            {
                wrong[CardFields.Setting(instance, stage)] = $"What it was set to: {problem}.";
            }
        }

        if (wrong.Count == 0 && !typed.Opened && typed.Conditions.Count == 0 && facts.Step.Work.All(work => typed.Of(work.Instance).IsEmpty))
        {
            wrong["card-nothing"] = "Nothing of this step is ticked. Tick what the card says.";
        }

        return wrong;
    }

    /// <summary>Why it can't be a late report of its doer, in the words after "because".</summary>
    public static IEnumerable<string> Lacks(CardFacts facts, TypedCard typed)
    {
        if (typed.IsOwn != true)
        {
            yield return "it is somebody else's work";
        }

        if (facts.PrintedAt is null)
        {
            yield return "no card number is given";
        }

        if (facts.Moment is null)
        {
            yield return "date or time is missing";
        }

        var place = facts.Step.Work.Count > 0 ? facts.Step.Work[0].Instance.Place : facts.Step.Place;
        foreach (var condition in typed.Conditions)
        {
            if (place is not null && facts.Moment is { } at && facts.Reading.State.LastSaid(facts.Reading.Now, condition.Aspect, place) is { } said && said.At > at && said.Value != condition.Value)
            {
                yield return "the car was said to be otherwise since then";
            }
        }

        foreach (var (instance, stage, group) in CardFields.Stages(facts.Step, typed))
        {
            if (group.Stages[stage.Number] is not { IsEmpty: false } done)
            {
                continue;
            }

            if (CardFields.ToolOf(facts.Reading, done) is null)
            {
                yield return $"the tool of stage {stage.Number} is missing";
            }

            if (stage.Conditions.Except(typed.Conditions).Any())
            {
                yield return "how the car stood is missing";
            }
        }
    }

    private static IReadOnlyList<JointPosition> Touched(CardFacts facts, TypedCard typed) =>
        [.. facts.Step.Work.Where(work => !typed.Of(work.Instance).IsEmpty).SelectMany(work => work.Instance.Positions).Distinct()];

    private static string? OfCell(CardFacts facts, GroupInstance instance, Stage stage, TypedStage typed, int visit)
    {
        if (CardFields.ToolOf(facts.Reading, typed) is not { } tool)
        {
            return null;
        }

        if (instance.Group.RunDown == RunDown.Add && typed.RunDowns[visit].Trim().Length > 0
            && !EnteredTorque.TryParse(typed.RunDowns[visit], TorqueUnit.NewtonMetre, out _, out var unread))
        {
            return $"The run-down torque: {unread}.";
        }

        return tool.Kind.Evidence(stage) switch
        {
            TorqueKind.SettingConfirmed => null,
            TorqueKind.AngleTurned => Turn.Read(typed.Values[visit]) is null ? "Write the angle in degrees, such as 90." : null,
            _ => EnteredTorque.TryParse(typed.Values[visit], tool.Unit, out _, out var problem) ? null : $"The reading: {problem}.",
        };
    }
}
