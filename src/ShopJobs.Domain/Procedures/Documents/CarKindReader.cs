namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads the kinds of car of the register: what differs from its own list.</summary>
internal sealed class CarKindReader(ProblemsFound problems, Consequences consequences, IReadOnlyDictionary<string, JointKind> kinds)
{
    private static readonly string[] Keys = ["name", "positions", "places", "lacks", "adds"];

    public CarKind? Read(string key, DocumentNode node)
    {
        if (MapReader.Of(node, problems, Keys) is not { } map)
        {
            return null;
        }

        if (key is JointList.Base or JointList.None)
        {
            problems.Error(map.Map, $"“{key}” is no name for a kind of car: it has a meaning of its own", "give it another name");
        }

        var name = map.Text("name", 80) ?? "";
        var before = problems.Errors;
        var lacks = map.List("lacks").Select(Known).OfType<string>().ToHashSet();
        var resolved = kinds.Values.Where(kind => !lacks.Contains(kind.Key)).ToDictionary(kind => kind.Key);
        foreach (var (changed, value) in Changed(map, "positions", lacks))
        {
            resolved[changed] = resolved[changed] with { Positions = KindReader.Count(value, problems) ?? 1 };
        }

        foreach (var (changed, value) in Changed(map, "places", lacks))
        {
            resolved[changed] = resolved[changed] with { Places = KindReader.Places(value, problems) };
        }

        foreach (var (added, kind) in new KindReader(problems, consequences, kinds.Concat(resolved).GroupBy(kind => kind.Key).ToDictionary(kind => kind.Key, kind => kind.Last().Value)).Read(map.List("adds")))
        {
            resolved[added] = kind;
        }

        CheckRiding(map, resolved, before);
        return new CarKind(key, name, resolved);
    }

    private IEnumerable<(string Key, DocumentNode Value)> Changed(MapReader map, string what, HashSet<string> lacks)
    {
        if (!map.Has(what))
        {
            yield break;
        }

        if (map.At(what) is not MapNode changed)
        {
            problems.Error(map.At(what), $"“{what}” needs joint kinds, each with what it is on this car", "write docs/procedures.md's form, or delete the key");
            yield break;
        }

        foreach (var entry in changed.Entries)
        {
            if (Known(entry.Key) is not { } key)
            {
                continue;
            }

            if (lacks.Contains(key))
            {
                problems.Error(entry.Key, $"“{key}” is changed here and lacking as well", "delete one of the two");
                continue;
            }

            yield return (key, entry.Value);
        }
    }

    private string? Known(DocumentNode node)
    {
        if (MapReader.IdOf(node, problems, points: true) is not { } key || kinds.ContainsKey(key))
        {
            return node is TextNode text && kinds.ContainsKey(text.Text) ? text.Text : null;
        }

        problems.Error(node, $"There is no joint kind {Wording.Quote(key)} in this register", Wording.Nearest(key, [.. kinds.Keys]));
        return null;
    }

    // Each position rides on the one with its number, on this car too.
    private void CheckRiding(MapReader map, Dictionary<string, JointKind> resolved, int before)
    {
        foreach (var rider in problems.Errors > before ? [] : resolved.Values.Where(kind => kind.RidesOn is not null))
        {
            if (!resolved.TryGetValue(rider.RidesOn!, out var carrier))
            {
                problems.Error(map.Map, $"“{rider.Key}” rides on “{rider.RidesOn}”, which this car lacks", "let it lack both, or neither");
            }
            else if (rider.Positions != carrier.Positions || !rider.Places.All(carrier.Places.Contains))
            {
                problems.Error(map.Map, $"“{rider.Key}” and “{carrier.Key}”, on which it rides, differ in places or positions on this car", "change both alike: each position rides on the one with its number");
            }
        }
    }
}
