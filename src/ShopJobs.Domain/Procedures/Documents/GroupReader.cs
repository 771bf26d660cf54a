using FluentValidation;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>One group as far as it could be read; <see cref="Group"/> is null where a part is missing.</summary>
internal sealed record GroupDraft(MapReader Map, string? Id, JointKind? Kind, bool Temporary, int Stages, string? JamGroup, JointGroup? Group);

/// <summary>Reads the joint groups of a procedure.</summary>
internal sealed class GroupReader(ProblemsFound problems, JointRegister register)
{
    private static readonly string[] Keys =
    [
        "id", "name", "key", "thread", "class", "class-note", "seat", "condition", "risk", "hardware", "re-torque", "run-down",
        "run-down-permitted", "adapter", "limited-by", "mark", "nut", "engaged", "bearing-limit", "jam", "if-short", "redo", "within",
        "temporary", "stages", "source",
    ];

    private const int MostStages = 20;

    private readonly StageReader stages = new(problems, register);
    private readonly FastenerReader fasteners = new(problems);
    private readonly MatingReader mating = new(problems);

    public IReadOnlyList<GroupDraft> Read(IReadOnlyList<DocumentNode> nodes)
    {
        var drafts = nodes.Select(node => MapReader.Of(node, problems, Keys)).OfType<MapReader>().Select(One).ToList();
        foreach (var again in drafts.Where(draft => draft.Id is not null).GroupBy(draft => draft.Id).SelectMany(same => same.Skip(1)))
        {
            problems.Error(again.Map.At("id"), $"The group “{again.Id}” comes twice", "give it an id of its own");
        }

        foreach (var again in drafts.Where(draft => draft.Kind is not null).GroupBy(draft => draft.Kind!.Key).SelectMany(same => same.Skip(1)))
        {
            problems.Error(again.Map.At("key"), $"Two groups tighten “{again.Kind!.Key}”", "a joint belongs to one group of a procedure: put the stages together");
        }

        foreach (var draft in drafts)
        {
            new GroupChecks(problems, drafts).Check(draft);
        }

        return drafts;
    }

    private GroupDraft One(MapReader map)
    {
        var before = problems.Errors;
        var id = map.Id("id");
        var name = map.Text("name", 80);
        var kind = Kind(map);
        var thread = fasteners.Thread(map);
        var (strength, note) = fasteners.Strength(map);
        var seat = fasteners.Seat(map);
        var condition = map.Choice("condition", Vocabulary.Condition);
        var risk = map.Choice("risk", Vocabulary.Risk);
        var hardware = fasteners.Hardware(map);
        var reTorque = fasteners.ReTorque(map);
        var runDown = map.Choice("run-down", Vocabulary.RunDown, RunDown.NotStated);
        var runDownPermitted = fasteners.RunDownPermitted(map, runDown);
        var limitedBy = map.TextIfAny("limited-by", 80);
        var mark = map.TextIfAny("mark", 80);
        var nut = mating.Nut(map);
        var engaged = mating.Engaged(map);
        var bearingLimit = mating.BearingLimit(map, seat);
        var jam = fasteners.Jam(map, out var jamGroup);
        var ifShort = map.Choice("if-short", Vocabulary.IfShort, IfShort.BackOff);
        var redo = map.Choice("redo", Vocabulary.Redo, RedoScope.Joint);
        var within = map.Has("within") ? Amounts.Time(map.At("within"), problems) : null;
        var temporary = map.YesNo("temporary", false) ?? false;
        var source = Source(map, id);
        var adapter = fasteners.Adapter(map, source);
        var stageNodes = map.Needed("stages") is null ? [] : map.List("stages");
        var drafts = stages.Read(stageNodes, kind, source);
        if (stageNodes.Count is 0 or > MostStages && map.At("stages") is ListNode list)
        {
            problems.Error(list, $"There are {list.Items.Count} stages", $"write from 1 to {MostStages}, the last one final");
        }

        if (drafts.Any(stage => stage.IsTurned))
        {
            CheckTurned(map, reTorque);
        }

        var whole = thread is not null && condition is not null && risk is not null && hardware is not null && runDown is not null
            && ifShort is not null && redo is not null && source is not null && stageNodes.Count > 0
            && drafts.Count == stageNodes.Count && drafts.All(stage => stage.Stage is not null);
        var group = whole
            ? new JointGroup(
                id ?? "", name ?? "", kind?.Key ?? "", thread!, strength, note, seat, condition!.Value, risk!.Value, hardware!, reTorque,
                runDown!.Value, jam, ifShort!.Value, redo!.Value, temporary, [.. drafts.Select(stage => stage.Stage!)], source!)
            {
                Adapter = adapter,
                RunDownPermitted = runDownPermitted,
                Within = within,
                LimitedBy = limitedBy,
                Mark = mark,
                Nut = nut,
                Engaged = engaged,
                BearingLimit = bearingLimit,
            }
            : null;
        Judge(map, group, clean: problems.Errors == before);
        return new GroupDraft(map, id, kind, temporary, stageNodes.Count, jamGroup, group);
    }

    private void CheckTurned(MapReader map, ReTorque? reTorque)
    {
        if (reTorque is { Forbidden: false } || map.At("re-torque") is TextNode { Text: "none" })
        {
            problems.Error(map.At("re-torque"), "A joint that is turned by an angle is never pulled to a torque again", "write “re-torque: forbidden”");
        }

        if (map.Has("jam"))
        {
            problems.Error(map.At("jam"), "Two jammed nuts drive the stud, and the last of its stages turns by an angle: the nuts creep, so the angle read is not the stud's", "delete “jam”, or write torque stages");
        }
    }

    /// <summary>The specification validator's errors become problems of the group; its warnings become cautions, once the group is free of errors.</summary>
    private void Judge(MapReader map, JointGroup? group, bool clean)
    {
        if (group is null)
        {
            return;
        }

        foreach (var found in ProcedureCautions.Judge(group))
        {
            if (found.Severity != Severity.Error)
            {
                if (clean)
                {
                    problems.Caution(map.Map, Of(group, found.Advice()), found.Advice().Next);
                }
            }
            else if (found.ErrorCode != "target-outside")
            {
                problems.Error(map.Map, Of(group, found.Advice()), found.Advice().Next);
            }
        }

        foreach (var caution in clean ? ProcedureCautions.OfDocument(group) : [])
        {
            problems.Caution(map.Map, Of(group, caution), caution.Next);
        }
    }

    private static string Of(JointGroup group, Advice advice) => $"Group “{group.Id}”: {advice.What}";

    private JointKind? Kind(MapReader map)
    {
        if (map.Id("key", points: true) is not { } key)
        {
            return null;
        }

        if (register.Kinds.TryGetValue(key, out var kind))
        {
            return kind;
        }

        problems.Error(map.At("key"), $"The joint register has no “{key}”", Wording.Nearest(key, [.. register.Kinds.Keys]));
        return null;
    }

    private Provenance? Source(MapReader map, string? id)
    {
        if (!map.Has("source"))
        {
            problems.Error(map.Map, $"Group “{id}” has no source: its numbers come from nowhere", "add “source” with document, revision, page and basis");
        }

        return SourceReader.Read(map, null);
    }
}
