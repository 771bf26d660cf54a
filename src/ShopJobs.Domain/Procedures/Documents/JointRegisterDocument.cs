namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>The joint register as a document. Its form is described in docs/procedures.md.</summary>
public static class JointRegisterDocument
{
    private static readonly string[] Keys = ["title", "demo-data", "results", "conditions", "settings", "as-found", "kinds", "cars"];

    /// <summary>True when the bytes look like a register and not like a procedure: they have “kinds” at the top.</summary>
    public static bool IsOne(byte[] bytes, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        return DocumentTree.Read(bytes, new ProblemsFound(), cancellation)?.Entries.Any(entry => entry.Key.Text == "kinds") == true;
    }

    /// <summary>The register, or every reason why it is not taken.</summary>
    public static LoadedDocument<JointRegister> Load(byte[] bytes, string name, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var problems = new ProblemsFound();
        var register = DocumentTree.Read(bytes, problems, cancellation) is { } root ? Read(new MapReader(root, problems, Keys)) : null;
        return problems.Close(name, bytes, register);
    }

    private static JointRegister? Read(MapReader map)
    {
        var title = map.Text("title", 200);
        var demo = map.YesNo("demo-data");
        var aspectReader = new AspectReader(map.Problems);
        var aspects = Named(map, "conditions").ToDictionary(aspect => aspect.Name, aspect => aspectReader.Read(aspect.Value));
        var consequences = new Consequences(map.Problems);
        var resultReader = new ResultReader(map.Problems, consequences);
        var results = resultReader.Results(map);
        var settings = Named(map, "settings").ToDictionary(setting => setting.Name, setting => resultReader.Setting(setting.Name, setting.Value));
        var kinds = new KindReader(map.Problems, consequences).Read(map.Needed("kinds") is null ? [] : map.List("kinds"));
        aspectReader.Check(kinds);
        var carReader = new CarKindReader(map.Problems, consequences, kinds);
        var cars = Named(map, "cars").Select(car => carReader.Read(car.Name, car.Value)).OfType<CarKind>().ToList();
        var everywhere = kinds.Values.Concat(cars.SelectMany(car => car.Kinds.Values)).DistinctBy(kind => kind.Key).ToDictionary(kind => kind.Key);
        var asFound = Named(map, "as-found").Select(sheet => (Sheet: resultReader.AsFound(sheet.Name, sheet.Value), sheet.Value)).Where(read => read.Sheet is not null).ToList();
        foreach (var (sheet, at) in asFound.Where(read => everywhere.Values.All(kind => kind.System != read.Sheet!.Key)))
        {
            map.Problems.Error(at, $"No kind of joint is of the system “{sheet!.Key}”", "write the system as the kinds have it, or delete the sheet");
        }

        consequences.Check([.. results.Select(result => result.Key)], [.. settings.Keys], everywhere);
        return new JointRegister(
            title ?? "", demo ?? false, kinds, aspects.ToDictionary(aspect => aspect.Key, aspect => aspect.Value.Values),
            settings.ToDictionary(setting => setting.Key, setting => setting.Value.Undoes))
        {
            Results = [.. results.Select(result => result.Key)],
            ResultKinds = results.Concat(settings.Values.Select(setting => setting.Kind)).DistinctBy(kind => kind.Key).ToDictionary(kind => kind.Key),
            AsFound = asFound.Select(read => read.Sheet!).DistinctBy(sheet => sheet.Key).ToDictionary(sheet => sheet.Key),
            Cars = cars.DistinctBy(car => car.Key).ToDictionary(car => car.Key),
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
