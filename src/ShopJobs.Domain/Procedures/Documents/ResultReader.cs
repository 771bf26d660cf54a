namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads the results and settings of the register: their names alone, or what each holds.</summary>
internal sealed class ResultReader(ProblemsFound problems, Consequences consequences)
{
    private static readonly string[] Keys = ["name", "measures", "notes", "instrument", "after", "holds", "of", "source"];
    private static readonly string[] NoteKeys = ["id", "text", "one-of", "day"];
    private static readonly Dictionary<string, bool> InstrumentWords = new() { ["needed"] = true, ["none"] = false };
    private static readonly Dictionary<string, bool> HoldsWords = new() { ["move"] = true, ["road"] = false };
    private static readonly Dictionary<string, bool> AfterWords = new() { ["drive"] = true };

    private readonly StepAnswerReader answers = new(problems);

    /// <summary>Results: a list of their names, or each with its keys.</summary>
    public IReadOnlyList<ResultKind> Results(MapReader register)
    {
        if (register.At("results") is not MapNode named || !register.Has("results"))
        {
            return Bare(register);
        }

        return
        [
            .. named.Entries.Select(entry => MapReader.IdOf(entry.Key, problems) is { } key && MapReader.Of(entry.Value, problems, Keys) is { } map
                ? One(key, map)
                : null).OfType<ResultKind>(),
        ];
    }

    /// <summary>A setting: a list of what changing it undoes, or its keys with “undoes” among them.</summary>
    public (ResultKind Kind, IReadOnlyList<Undone> Undoes) Setting(string name, DocumentNode node)
    {
        var key = $"setting:{name}";
        if (node is not MapNode || MapReader.Of(node, problems, [.. Keys, "undoes"]) is not { } map)
        {
            return (ResultKind.Bare(key), consequences.Read(node));
        }

        if (map.Has("of"))
        {
            problems.Error(map.At("of"), $"The setting “{name}” is of a place", "delete the line: a setting is of the car; name its sides as measures");
        }

        return (One(key, map) with { OfPlace = false }, map.Has("undoes") ? consequences.Read(map.At("undoes")) : []);
    }

    /// <summary>The as-found sheet of a system: measures and notes, each of which may be left out when it is not seen.</summary>
    public ResultKind? AsFound(string system, DocumentNode node) =>
        MapReader.Of(node, problems, ["name", "measures", "notes", "source"]) is { } map ? One(system, map) : null;

    private List<ResultKind> Bare(MapReader register)
    {
        var read = register.List("results").Select(node => (Node: node, Name: MapReader.IdOf(node, problems))).Where(result => result.Name is not null).ToList();
        foreach (var again in read.GroupBy(result => result.Name).SelectMany(same => same.Skip(1)))
        {
            problems.Error(again.Node, $"The result “{again.Name}” comes twice", "keep one of them");
        }

        return [.. read.Select(result => ResultKind.Bare(result.Name!))];
    }

    private ResultKind One(string key, MapReader map)
    {
        var bare = ResultKind.Bare(key);
        var kind = bare with
        {
            Name = map.TextIfAny("name", 60) ?? bare.Name,
            Measures = answers.Measures(map, SourceReader.Read(map, null)),
            Notes = Notes(map),
            NeedsInstrument = map.Choice("instrument", InstrumentWords, false) ?? false,
            AfterDrive = map.Choice("after", AfterWords, false) ?? false,
            HoldsMove = map.Choice("holds", HoldsWords, false) ?? false,
            OfPlace = map.Choice("of", Vocabulary.AspectOf, false) ?? false,
        };
        if (kind is { Measures.Count: 0, Notes.Count: 0 } && map.Map.Entries.Count > 0)
        {
            problems.Error(map.Map, $"“{key}” has neither measures nor notes: there is nothing to record", "add what is measured, or write its name alone in a list");
        }

        return kind;
    }

    private List<ResultNote> Notes(MapReader result)
    {
        var found = new List<ResultNote>();
        foreach (var map in result.List("notes").Select(node => MapReader.Of(node, problems, NoteKeys)).OfType<MapReader>())
        {
            if (map.Id("id") is not { } id || map.Text("text", 80) is not { } text)
            {
                continue;
            }

            if (found.Exists(note => note.Id == id))
            {
                problems.Error(map.At("id"), $"The note “{id}” comes twice in this result", "give it an id of its own");
            }

            if (map.Has("one-of") && map.Has("day"))
            {
                problems.Error(map.At("day"), $"The note “{id}” is a day and one of some words", "keep one of them");
            }

            found.Add(new ResultNote(id, text, map.Texts("one-of"), map.YesNo("day", false) ?? false));
        }

        return found;
    }
}
