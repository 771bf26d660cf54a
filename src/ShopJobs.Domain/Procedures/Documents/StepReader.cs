namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>One step as far as it could be read; <see cref="Step"/> is null where a part is missing.</summary>
internal sealed record StepDraft(
    MapReader Map,
    string? Id,
    StepPer? Per,
    IReadOnlyList<string> Places,
    IReadOnlyList<WorkDraft> Work,
    bool Interleaved,
    IReadOnlyList<(DocumentNode At, string Key)> Opens,
    IReadOnlyList<WaitDraft> Waits,
    Step? Step);

/// <summary>Stages of a group in a step, with their place in the text.</summary>
internal sealed record WorkDraft(DocumentNode At, string Group, IReadOnlyList<int> Stages);

/// <summary>What a step waits for, with its place in the text.</summary>
internal sealed record WaitDraft(DocumentNode At, WaitsFor Wait);

/// <summary>Reads the steps of a procedure.</summary>
internal sealed class StepReader(ProblemsFound problems, JointRegister register)
{
    private static readonly string[] Keys =
    [
        "id", "title", "per", "places", "cautions", "lines", "ticks", "measures", "records", "work", "interleaved", "opens",
        "waits-for", "source",
    ];

    private readonly StepAnswerReader answers = new(problems);
    private readonly StepWorkReader works = new(problems);
    private readonly HashSet<string> places = [.. register.Kinds.Values.SelectMany(kind => kind.Places)];

    public IReadOnlyList<StepDraft> Read(IReadOnlyList<DocumentNode> nodes)
    {
        var drafts = new List<StepDraft>();
        foreach (var map in nodes.Select(node => MapReader.Of(node, problems, Keys)).OfType<MapReader>())
        {
            drafts.Add(One(map, drafts.LastOrDefault()?.Id));
        }

        foreach (var again in drafts.Where(draft => draft.Id is not null).GroupBy(draft => draft.Id).SelectMany(same => same.Skip(1)))
        {
            problems.Error(again.Map.At("id"), $"The step “{again.Id}” comes twice", "give it an id of its own");
        }

        return drafts;
    }

    private StepDraft One(MapReader map, string? above)
    {
        var id = map.Id("id");
        var title = map.Text("title", 120);
        var per = map.Choice("per", Vocabulary.Per);
        var at = Places(map, per);
        var lines = map.Texts("lines");
        if (map.Needed("lines") is ListNode { Items.Count: 0 } empty)
        {
            problems.Error(empty, "The step has no line", "write one action a line");
        }

        var source = SourceReader.Read(map, null);
        var ticks = answers.Ticks(map);
        var measures = answers.Measures(map, source);
        var records = Names(map, "records");
        var work = works.Read(map);
        var interleaved = map.YesNo("interleaved", false) ?? false;
        var opens = Names(map, "opens", points: true);
        var waits = new WaitsForReader(problems).Read(map, above, source);
        if (lines.Count > 0 && ticks.Count + measures.Count + records.Count + work.Count + opens.Count == 0)
        {
            problems.Error(map.Map, $"Step “{id}” asks for nothing: it could be signed without looking", "add a tick that names a state, or a measure");
        }

        var step = title is null || per is null
            ? null
            : new Step(
                id ?? "", title, per.Value, at, map.Texts("cautions"), lines, ticks, measures, [.. records.Select(record => record.Name)],
                [.. work.Select(part => new StepWork(part.Group, part.Stages))], interleaved, [.. opens.Select(open => open.Name)],
                [.. waits.Select(wait => wait.Wait)], source);
        CheckRecords(records, per);
        return new StepDraft(map, id, per, at, work, interleaved, opens, waits, step);
    }

    private List<string> Places(MapReader map, StepPer? per)
    {
        var found = new List<string>();
        if (per == StepPer.Car && map.Has("places"))
        {
            problems.Error(map.At("places"), "A step per car has places", "delete them, or write “per: place”");
        }

        if (per != StepPer.Place || map.Needed("places") is not { } list)
        {
            return found;
        }

        foreach (var node in MapReader.ItemsOf(list, problems))
        {
            if (MapReader.IdOf(node, problems) is not { } place)
            {
                continue;
            }

            if (!places.Contains(place))
            {
                problems.Error(node, $"No joint kind of the register is at “{place}”", Wording.Nearest(place, places));
            }
            else if (found.Contains(place))
            {
                problems.Error(node, $"The place “{place}” comes twice", "keep one of them");
            }
            else
            {
                found.Add(place);
            }
        }

        if (list is ListNode { Items.Count: 0 })
        {
            problems.Error(list, "The step is at no place", "name its places, or write “per: car”");
        }

        return found;
    }

    private List<(DocumentNode At, string Name)> Names(MapReader map, string key, bool points = false) =>
    [
        .. map.List(key).Select(node => (node, points ? MapReader.IdOf(node, problems, points) : MapReader.TextOf(node, problems, 60)))
            .Where(pair => pair.Item2 is not null).Select(pair => (pair.node, pair.Item2!)),
    ];

    private void CheckRecords(List<(DocumentNode At, string Name)> records, StepPer? per)
    {
        foreach (var (at, name) in records.Where(record => per == StepPer.Car && register.ResultOf(record.Name).OfPlace))
        {
            problems.Error(at, $"Each place has its own {Wording.Quote(name)}, and this step is per car", "write “per: place”");
        }

        foreach (var (at, name) in records.Where(record => !StepChecks.IsResult(register, record.Name)))
        {
            problems.Error(at, $"The register has no result {Wording.Quote(name)}", Wording.Nearest(name, StepChecks.ResultsOf(register)));
        }
    }
}
