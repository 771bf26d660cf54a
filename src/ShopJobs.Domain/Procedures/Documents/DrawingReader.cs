using System.Globalization;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads how the fasteners of a joint kind lie: <c>drawing: {rows: ["1 2 3", "4 . 5"], top: front}</c>.</summary>
internal static class DrawingReader
{
    private const int LongestSide = 24;
    private static readonly string[] Keys = ["rows", "round", "top", "bottom", "left", "right"];
    private static readonly Dictionary<string, bool> Ways = new() { ["clockwise"] = true, ["anticlockwise"] = false };

    /// <summary>The drawing, or null with the problem noted.</summary>
    public static JointDrawing? Read(MapReader kind, int positions, ProblemsFound problems)
    {
        if (!kind.Has("drawing") || MapReader.Of(kind.At("drawing"), problems, Keys) is not { } map)
        {
            return null;
        }

        if (map.Has("rows") == map.Has("round"))
        {
            problems.Error(kind.At("drawing"), "A drawing has “rows” or “round”, one of them", "rows: [\"1 2 3\", \"4 5 6\"], or round: clockwise");
            return null;
        }

        var drawing = new JointDrawing(map.Has("rows") ? [.. map.List("rows").Select(node => Row(node, problems))] : [])
        {
            IsClockwise = !map.Has("round") || map.Choice("round", Ways) is not false,
            Top = map.TextIfAny("top", LongestSide),
            Bottom = map.TextIfAny("bottom", LongestSide),
            Left = map.TextIfAny("left", LongestSide),
            Right = map.TextIfAny("right", LongestSide),
        };
        if (drawing.Draws(positions))
        {
            return drawing;
        }

        problems.Error(
            kind.At("drawing"),
            drawing.IsRound ? "A circle needs three positions or more" : string.Create(CultureInfo.InvariantCulture, $"The rows do not hold each number from 1 to {positions} once"),
            "write each number once, with a point for a gap");
        return null;
    }

    private static IReadOnlyList<int> Row(DocumentNode node, ProblemsFound problems)
    {
        var row = new List<int>();
        foreach (var word in (MapReader.TextOf(node, problems) ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (word == ".")
            {
                row.Add(0);
            }
            else if (int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0)
            {
                row.Add(number);
            }
            else
            {
                problems.Error(node, $"{Wording.Quote(word)} is no number of a fastener", "write numbers with spaces between them, and a point for a gap");
            }
        }

        return row;
    }
}
