namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads the aspects of the car's condition: the values each may take, and how a declaration of it holds.</summary>
internal sealed class AspectReader(ProblemsFound problems)
{
    private const decimal ShortestHours = 0.1m;
    private const decimal LongestHours = 8760;

    private static readonly string[] Keys = ["values", "of", "lasts", "ends-at"];

    private readonly List<(DocumentNode Node, string Key)> openings = [];

    /// <summary>An aspect: a list of its values alone is of the whole car, and ends at a release only.</summary>
    public (IReadOnlyList<string> Values, ConditionAspect Aspect) Read(DocumentNode node)
    {
        if (node is not MapNode)
        {
            return (Values(node), ConditionAspect.OfCar);
        }

        var map = new MapReader((MapNode)node, problems, Keys);
        var values = map.Needed("values") is { } list ? Values(list) : [];
        var ofPlace = map.Choice("of", Vocabulary.AspectOf, false);
        var lasts = map.Has("lasts") ? Amounts.With(map.At("lasts"), problems, "h", ShortestHours, LongestHours) : null;
        return (values, new ConditionAspect(ofPlace ?? false, lasts, Openings(map)));
    }

    /// <summary>Checks the joint keys that were read, once all kinds are known.</summary>
    public void Check(IReadOnlyDictionary<string, JointKind> kinds)
    {
        foreach (var (node, key) in openings.Where(opening => !kinds.ContainsKey(opening.Key)))
        {
            problems.Error(node, $"There is no joint kind {Wording.Quote(key)} in this register", Wording.Nearest(key, [.. kinds.Keys]));
        }
    }

    private List<string> Values(DocumentNode node)
    {
        var values = Named(node, points: false, "value");
        if (node is ListNode { Items.Count: 0 })
        {
            problems.Error(node, "The list of values is empty", "name what it may be, for example [free, held]");
        }

        return [.. values.Select(value => value.Name)];
    }

    private List<string> Openings(MapReader map)
    {
        var found = map.Has("ends-at") ? Named(map.At("ends-at"), points: true, "joint kind") : [];
        openings.AddRange(found);
        return [.. found.Select(opening => opening.Name)];
    }

    private List<(DocumentNode Node, string Name)> Named(DocumentNode list, bool points, string what)
    {
        var found = new List<(DocumentNode Node, string Name)>();
        foreach (var node in MapReader.ItemsOf(list, problems))
        {
            if (MapReader.IdOf(node, problems, points) is not { } name)
            {
                continue;
            }

            if (found.Exists(other => other.Name == name))
            {
                problems.Error(node, $"The {what} {Wording.Quote(name)} comes twice", "keep one of them");
            }
            else
            {
                found.Add((node, name));
            }
        }

        return found;
    }
}
