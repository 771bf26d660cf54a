namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads the joint kinds of the register.</summary>
/// <param name="beside">Kinds of the car that these are added to.</param>
internal sealed class KindReader(ProblemsFound problems, Consequences consequences, IReadOnlyDictionary<string, JointKind>? beside = null)
{

    private static readonly string[] Keys =
        ["key", "name", "system", "places", "positions", "filled-by", "rides-on", "behind", "numbered", "drawing", "undoes", "least", "least-why", "temporary"];

    private readonly Dictionary<string, (JointKind Kind, MapReader Map)> read = [];

    public IReadOnlyDictionary<string, JointKind> Read(IReadOnlyList<DocumentNode> nodes)
    {
        foreach (var map in nodes.Select(node => MapReader.Of(node, problems, Keys)).OfType<MapReader>())
        {
            var kind = One(map);
            if (beside?.ContainsKey(kind.Key) == true)
            {
                problems.Error(map.At("key"), $"The joint kind “{kind.Key}” is in the register already", "change its positions or places, or give it another key");
            }

            if (read.TryGetValue(kind.Key, out var first) && kind.Key.Length > 0)
            {
                problems.Error(map.At("key"), $"The joint kind “{kind.Key}” comes twice, first on line {first.Map.Map.Line}", "keep one of them");
            }
            else if (kind.Key.Length > 0)
            {
                read[kind.Key] = (kind, map);
            }
        }

        foreach (var (kind, map) in read.Values)
        {
            CheckRiding(kind, map);
            CheckBehind(kind, map);
        }

        return read.ToDictionary(pair => pair.Key, pair => pair.Value.Kind);
    }

    private JointKind One(MapReader map)
    {
        var key = map.Id("key", points: true) ?? "";
        var name = map.Text("name", 80) ?? "";
        var system = map.Choice("system", Vocabulary.Systems) is null ? null : map.TextIfAny("system");
        List<string> places = map.Needed("places") is { } list ? Places(list, problems) : [];
        var positions = map.Whole("positions", 1, JointCount.Most) ?? 1;
        var filling = map.Choice("filled-by", Vocabulary.Filling) ?? Filling.Bolt;
        var ridesOn = map.Has("rides-on") ? map.Id("rides-on", points: true) : null;
        var undoes = map.Has("undoes") ? consequences.Read(map.At("undoes")) : [];
        var why = map.TextIfAny("least-why");
        var least = Least(map, key, system);
        var temporary = map.YesNo("temporary", false) ?? false;
        if (temporary && undoes.Count > 0)
        {
            problems.Error(map.At("undoes"), $"“{key}” is temporary and undoes something", "delete “undoes”: taking a tool off undoes nothing");
        }

        return new JointKind(key, name, system ?? "", places, positions, filling, ridesOn, undoes, least, why, temporary)
        {
            Behind = map.Has("behind") ? map.Id("behind", points: true) : null,
            Numbered = map.TextIfAny("numbered", 120),
            Drawing = DrawingReader.Read(map, positions, problems),
        };
    }

    /// <summary>A count of positions; null with the problem noted.</summary>
    public static int? Count(DocumentNode node, ProblemsFound problems)
    {
        if (MapReader.TextOf(node, problems) is not { } text)
        {
            return null;
        }

        if (int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= JointCount.Most)
        {
            return count;
        }

        problems.Error(node, $"{Wording.Quote(text)} is not a whole number from 1 to {JointCount.Most}", "write digits only; a joint that the car does not have goes under “lacks”");
        return null;
    }

    /// <summary>Places of a kind, each once.</summary>
    public static List<string> Places(DocumentNode list, ProblemsFound problems)
    {
        var places = new List<string>();
        foreach (var node in MapReader.ItemsOf(list, problems))
        {
            if (MapReader.IdOf(node, problems) is { } place)
            {
                if (places.Contains(place))
                {
                    problems.Error(node, $"The place “{place}” comes twice", "keep one of them");
                }
                else
                {
                    places.Add(place);
                }
            }
        }

        if (places.Count == 0 && list is ListNode { Items.Count: 0 } empty)
        {
            problems.Error(empty, "The list of places is empty", "name at least one place");
        }

        return places;
    }

    private Dictionary<ReleaseKind, LeastState> Least(MapReader map, string key, string? system)
    {
        var found = new Dictionary<ReleaseKind, LeastState>();
        if (!map.Has("least") || MapReader.Of(map.At("least"), problems, Vocabulary.Release.Keys) is not { } least)
        {
            return found;
        }

        foreach (var (word, release) in Vocabulary.Release.Where(pair => least.Has(pair.Key)))
        {
            if (least.Choice(word, Vocabulary.Least) is not { } state)
            {
                continue;
            }

            found[release] = state;
            if (state == LeastState.HandTight)
            {
                CheckLower(map, least.At(word), release, key, system);
            }
        }

        return found;
    }

    private void CheckLower(MapReader map, DocumentNode node, ReleaseKind release, string key, string? system)
    {
        if (release != ReleaseKind.Move)
        {
            problems.Error(node, $"“{key}” would be hand-tight on {(release == ReleaseKind.Road ? "the road" : "the track")}", "hand-tight is for “move” only");
        }
        else if (system is not null && Vocabulary.Systems[system])
        {
            problems.Error(node, $"“{key}” belongs to {system}: hand-tight never moves there", "delete the line: every position counts");
        }
        else if (!map.Has("least-why"))
        {
            problems.Error(node, $"“{key}” may move hand-tight and no reason is given", "add “least-why”");
        }
    }

    private void CheckBehind(JointKind kind, MapReader map)
    {
        if (kind.Behind is not { } beforeKey)
        {
            return;
        }

        var at = map.At("behind");
        if ((read.TryGetValue(beforeKey, out var found) ? found.Kind : beside?.GetValueOrDefault(beforeKey)) is not { } before)
        {
            problems.Error(at, $"“{kind.Key}” is behind “{beforeKey}”, which is not in this register", Wording.Nearest(beforeKey, read.Keys));
        }
        else if (!kind.Places.Any(before.Places.Contains))
        {
            problems.Error(at, $"“{kind.Key}” is behind “{beforeKey}”, and no place has both", "a joint is behind another at its own place");
        }
        else if (before.Behind is not null || beforeKey == kind.Key)
        {
            problems.Error(at, $"“{kind.Key}” is behind “{beforeKey}”, which is behind a joint itself", "name the joint that comes off first, for both");
        }
    }

    private void CheckRiding(JointKind kind, MapReader map)
    {
        if (kind.RidesOn is not { } carrierKey)
        {
            return;
        }

        var at = map.At("rides-on");
        if ((read.TryGetValue(carrierKey, out var found) ? found.Kind : beside?.GetValueOrDefault(carrierKey)) is not { } carrier)
        {
            problems.Error(at, $"“{kind.Key}” rides on “{carrierKey}”, which is not in this register", Wording.Nearest(carrierKey, read.Keys));
            return;
        }

        if (!kind.Places.All(carrier.Places.Contains) || kind.Positions != carrier.Positions)
        {
            problems.Error(at, $"“{kind.Key}” and “{carrierKey}”, on which it rides, differ in places or positions", "each position rides on the one with its number");
        }

        var trail = new List<string> { kind.Key };
        for (var next = carrierKey; next is not null; next = read.TryGetValue(next, out var under) ? under.Kind.RidesOn : null)
        {
            if (next == kind.Key)
            {
                problems.Error(at, $"Joints ride on each other in a loop: {string.Join(" → ", trail.Append(next))}", "break the loop");
                return;
            }

            if (trail.Contains(next))
            {
                return;
            }

            trail.Add(next);
        }
    }
}
