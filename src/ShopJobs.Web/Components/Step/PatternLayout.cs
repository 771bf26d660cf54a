using ShopJobs.Domain.Procedures;

namespace ShopJobs.Web.Components.Step;

/// <summary>Where each position of a group stands in its drawing.</summary>
/// <param name="Width">Width of the drawing.</param>
/// <param name="Height">Height of the drawing.</param>
/// <param name="Points">Middle of each position, by number.</param>
/// <param name="IsRound">True for a circle, position 1 at the top, of four at the top left, and on clockwise; else rows from the left.</param>
public sealed record PatternLayout(double Width, double Height, IReadOnlyDictionary<int, (double X, double Y)> Points, bool IsRound)
{
    /// <summary>Edge of one position's hexagon, in the units of the drawing.</summary>
    public const double Nut = 80;

    private const int LeastRound = 3;
    private const int MostRound = 9;
    private const int MostInRow = 5;
    private const double RowStep = 124;
    private const double Margin = 66;

    /// <summary>As the register draws the joint; where it does not, three to nine positions on a circle, any other count in rows of up to five.</summary>
    public static PatternLayout For(int count, JointDrawing? drawing = null) =>
        drawing is null || !drawing.Draws(count) ? count is >= LeastRound and <= MostRound ? Round(count) : Rows(count)
        : drawing.IsRound ? Round(count, drawing.IsClockwise ? 1 : -1, fromTop: true)
        : Rows(drawing.Rows);

    /// <summary>The lines between one visit and the next, in order of the visits.</summary>
    public IEnumerable<((double X, double Y) From, (double X, double Y) To)> Lines(Stage stage)
    {
        ArgumentNullException.ThrowIfNull(stage);
        return stage.Visits.Zip(stage.Visits.Skip(1))
            .Where(pair => pair.First != pair.Second)
            .Select(pair => (Points[pair.First], Points[pair.Second]));
    }

    /// <summary>How the positions are numbered: by the register's own words; a circle is drawn from its top, four on its diagonals. Empty where nothing is known.</summary>
    public string Numbering(string? byRegister) => byRegister is { } words ? $"Numbered {words}"
        : !IsRound ? ""
        : Points.Count == 4 ? "1 is at the top left, then clockwise"
        : "1 is at the top, then clockwise";

    private static PatternLayout Round(int count, int way = 1, bool fromTop = false)
    {
        const double Edge = 400;
        var radius = (Edge / 2) - Margin;
        var turn = count == 4 && !fromTop ? -Math.PI / 4 : 0;
        return new PatternLayout(Edge, Edge, Enumerable.Range(1, count).ToDictionary(number => number, number =>
        {
            var angle = (way * 2 * Math.PI * (number - 1) / count) + turn;
            return ((Edge / 2) + (radius * Math.Sin(angle)), (Edge / 2) - (radius * Math.Cos(angle)));
        }), true);
    }

    private static PatternLayout Rows(int count)
    {
        var across = count <= MostInRow ? count : Math.Min(MostInRow, (count + 1) / 2);
        return Rows([.. Enumerable.Range(1, count).Chunk(across)]);
    }

    private static PatternLayout Rows(IReadOnlyList<IReadOnlyList<int>> rows) => new(
        (2 * Margin) + ((rows.Max(row => row.Count) - 1) * RowStep),
        (2 * Margin) + ((rows.Count - 1) * RowStep),
        rows.SelectMany((row, down) => row.Select((number, across) => (number, At: (Margin + (across * RowStep), Margin + (down * RowStep)))))
            .Where(one => one.number > 0).ToDictionary(one => one.number, one => one.At),
        false);
}
