namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads what a step waits for. Absent means the step above; an empty list means nothing.</summary>
internal sealed class WaitsForReader(ProblemsFound problems)
{
    private static readonly string[] Keys = ["group", "stage", "result", "cure", "hours"];

    public IReadOnlyList<WaitDraft> Read(MapReader step, string? above, Provenance? source)
    {
        if (!step.Has("waits-for"))
        {
            return above is null ? [] : [new WaitDraft(step.Map, new WaitsFor.ForStep(above))];
        }

        return [.. step.List("waits-for").Select(node => One(node, step, source)).OfType<WaitDraft>()];
    }

    private WaitDraft? One(DocumentNode node, MapReader step, Provenance? source)
    {
        if (node is TextNode)
        {
            return MapReader.IdOf(node, problems) is { } id ? new WaitDraft(node, new WaitsFor.ForStep(id)) : null;
        }

        if (MapReader.Of(node, problems, Keys) is not { } map)
        {
            return null;
        }

        var kinds = ((string[])["group", "result", "cure"]).Where(map.Has).ToList();
        if (kinds.Count != 1 || (map.Has("stage") && kinds[0] != "group") || (map.Has("hours") && kinds[0] != "cure"))
        {
            problems.Error(node, "It is not clear what is waited for", "write a step's id, {group: …, stage: 1}, {result: …} or {cure: group, hours: 24 h}");
            return null;
        }

        return kinds[0] switch
        {
            "group" => map.Id("group") is { } group && map.Whole("stage", 1, 20) is { } stage
                ? new WaitDraft(node, new WaitsFor.ForGroup(group, stage))
                : null,
            "result" => map.Text("result", 60) is { } result ? new WaitDraft(node, new WaitsFor.ForResult(result)) : null,
            _ => Cure(map, step, source),
        };
    }

    private WaitDraft? Cure(MapReader map, MapReader step, Provenance? source)
    {
        var group = map.Id("cure");
        var hours = map.Needed("hours") is { } node ? Amounts.With(node, problems, "h", 0.1m, 10_000) : null;
        if (source is null && !step.Has("source"))
        {
            problems.Error(map.Map, "The hours of cure have no source", "add “source” at the step");
        }

        return group is null || hours is null ? null : new WaitDraft(map.Map, new WaitsFor.ForCure(group, hours.Value));
    }
}
