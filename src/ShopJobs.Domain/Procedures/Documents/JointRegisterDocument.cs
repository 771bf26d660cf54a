namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>The joint register as a document. Its form is described in docs/procedures.md.</summary>
public static class JointRegisterDocument
{
    private static readonly string[] Keys = ["title", "demo-data", "results", "conditions", "settings", "kinds"];

    /// <summary>True when the bytes look like a register and not like a procedure: they have “kinds” at the top.</summary>
    public static bool IsOne(byte[] bytes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        return DocumentTree.Read(bytes, new ProblemBook(), cancellation)?.Entries.Any(entry => entry.Key.Text == "kinds") == true;
    }

    /// <summary>The register, or every reason why it is not taken.</summary>
    public static LoadedDocument<JointRegister> Load(byte[] bytes, string name, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var problems = new ProblemBook();
        var register = DocumentTree.Read(bytes, problems, cancellation) is { } root ? Read(new MapReader(root, problems, Keys)) : null;
        return problems.Close(name, bytes, register);
    }

    private static JointRegister? Read(MapReader map)
    {
        var title = map.Text("title", 200);
        var demo = map.YesNo("demo-data");
        var results = map.List("results").Select(node => (Node: node, Name: MapReader.IdOf(node, map.Problems))).Where(r => r.Name is not null).ToList();
        foreach (var again in results.GroupBy(result => result.Name).SelectMany(same => same.Skip(1)))
        {
            map.Problems.Error(again.Node, $"The result “{again.Name}” comes twice", "keep one of them");
        }

        var aspectReader = new AspectReader(map.Problems);
        var aspects = Named(map, "conditions").ToDictionary(aspect => aspect.Name, aspect => aspectReader.Read(aspect.Value));
        var consequences = new Consequences(map.Problems);
        var settings = Named(map, "settings").ToDictionary(setting => setting.Name, setting => consequences.Read(setting.Value));
        var kinds = new KindReader(map.Problems, consequences).Read(map.Needed("kinds") is null ? [] : map.List("kinds"));
        aspectReader.Check(kinds);
        consequences.Check([.. results.Select(result => result.Name!)], [.. settings.Keys], kinds);
        return title is null || demo is null
            ? null
            : new JointRegister(title, demo.Value, kinds, aspects.ToDictionary(aspect => aspect.Key, aspect => aspect.Value.Values), settings)
            {
                Results = [.. results.Select(result => result.Name!)],
                Aspects = aspects.ToDictionary(aspect => aspect.Key, aspect => aspect.Value.Aspect),
            };
    }

    private static IEnumerable<(string Name, DocumentNode Value)> Named(MapReader map, string key)
    {
        if (!map.Has(key))
        {
            yield break;
        }

        if (map.At(key) is not MapNode named)
        {
            if (map.At(key) is not RefusedNode)
            {
                map.Problems.Error(map.At(key), $"“{key}” needs names, each with a list or with keys", "write docs/procedures.md's form, or delete the key");
            }

            yield break;
        }

        foreach (var entry in named.Entries)
        {
            if (MapReader.IdOf(entry.Key, map.Problems) is { } name)
            {
                yield return (name, entry.Value);
            }
        }
    }
}
