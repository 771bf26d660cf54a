using System.Globalization;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads which stages of which groups are done in a step. <c>stages: hand</c> means run down by hand, no torque.</summary>
internal sealed class StepWorkReader(ProblemsFound problems)
{
    private const string ByHand = "hand";

    public IReadOnlyList<WorkDraft> Read(MapReader step)
    {
        var found = new List<WorkDraft>();
        foreach (var map in step.List("work").Select(node => MapReader.Of(node, problems, ["group", "stages"])).OfType<MapReader>())
        {
            var group = map.Id("group");
            var stages = map.Needed("stages") is { } node ? Stages(node) : null;
            if (group is null || stages is null)
            {
                continue;
            }

            if (found.Any(work => work.Group == group))
            {
                problems.Error(map.At("group"), $"The group “{group}” comes twice in this step", "put its stages in one list");
            }

            found.Add(new WorkDraft(map.At("stages"), group, stages));
        }

        return found;
    }

    private List<int>? Stages(DocumentNode node)
    {
        if (node is TextNode { Text: ByHand })
        {
            return [];
        }

        if (node is not ListNode { Items.Count: > 0 } list)
        {
            if (node is not RefusedNode)
            {
                problems.Error(node, "No stage is named", "write for example [1, 2], or hand where they are only run down by hand");
            }

            return null;
        }

        var stages = new List<int>();
        foreach (var item in list.Items)
        {
            if (MapReader.TextOf(item, problems) is not { } text)
            {
                return null;
            }

            if (!int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number < 1 || (stages.Count > 0 && number <= stages[^1]))
            {
                problems.Error(item, $"{Wording.Quote(text)} is not the next stage", "name stages by number, counted from 1, in rising order");
                return null;
            }

            stages.Add(number);
        }

        return stages;
    }
}
