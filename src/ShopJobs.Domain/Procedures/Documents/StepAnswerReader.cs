namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads the ticks and measures of a step.</summary>
internal sealed class StepAnswerReader(ProblemsFound problems)
{
    public IReadOnlyList<Tick> Ticks(MapReader step)
    {
        var found = new List<Tick>();
        foreach (var map in step.List("ticks").Select(node => MapReader.Of(node, problems, ["id", "text"])).OfType<MapReader>())
        {
            if (map.Id("id") is { } id && map.Text("text") is { } text)
            {
                CheckOnce(map, id, found.Any(tick => tick.Id == id), "tick");
                found.Add(new Tick(id, text));
            }
        }

        return found;
    }

    public IReadOnlyList<Measure> Measures(MapReader step, Provenance? stepSource)
    {
        var found = new List<Measure>();
        foreach (var map in step.List("measures").Select(node => MapReader.Of(node, problems, ["id", "text", "unit", "min", "max", "source"])).OfType<MapReader>())
        {
            var id = map.Id("id");
            var text = map.Text("text");
            var unit = map.Text("unit", 20);
            var least = Limit(map, "min");
            var most = Limit(map, "max");
            var source = SourceReader.Read(map, stepSource);
            if (least > most)
            {
                problems.Error(map.At("min"), "The least value is above the greatest", "read both again from the instruction");
            }

            if ((map.Has("min") || map.Has("max")) && source is null && !map.Has("source") && !step.Has("source"))
            {
                problems.Error(map.Map, $"The limits of “{id}” have no source", "add “source” here or at the step");
            }

            if (id is not null && text is not null && unit is not null)
            {
                CheckOnce(map, id, found.Any(measure => measure.Id == id), "measure");
                found.Add(new Measure(id, text, unit, least, most, source));
            }
        }

        return found;
    }

    private decimal? Limit(MapReader map, string key)
    {
        if (!map.Has(key) || map.Text(key) is not { } text)
        {
            return null;
        }

        if (Amounts.Number(text) is { } value)
        {
            return value;
        }

        problems.Error(map.At(key), $"{Wording.Quote(text)} is not a number", "write the number alone; the unit has its own key");
        return null;
    }

    private void CheckOnce(MapReader map, string id, bool seen, string what)
    {
        if (seen)
        {
            problems.Error(map.At("id"), $"The {what} “{id}” comes twice in this step", "give it an id of its own");
        }
    }
}
