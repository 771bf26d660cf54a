namespace ShopJobs.Domain.Procedures;

/// <summary>
/// How the fasteners of a joint lie, seen from where they are worked: in rows, or around a circle from its top, and what is at each side, so
/// that whoever stands at the car knows which way the picture is held.
/// </summary>
/// <param name="Rows">Numbers row by row from the top, each from the left; 0 is a gap. Empty for a circle.</param>
public sealed record JointDrawing(IReadOnlyList<IReadOnlyList<int>> Rows)
{
    /// <summary>True where the numbers of a circle go on clockwise.</summary>
    public bool IsClockwise { get; init; } = true;

    /// <summary>True for a circle.</summary>
    public bool IsRound => Rows.Count == 0;

    /// <summary>What is above the picture, such as "front" or "inlet side"; null where nothing is stated.</summary>
    public string? Top { get; init; }

    /// <summary>What is below it.</summary>
    public string? Bottom { get; init; }

    /// <summary>What is to its left.</summary>
    public string? Left { get; init; }

    /// <summary>What is to its right.</summary>
    public string? Right { get; init; }

    /// <summary>True where it draws so many fasteners: a circle draws any number from three on.</summary>
    public bool Draws(int count) => IsRound ? count >= 3 : Rows.SelectMany(row => row).Where(number => number > 0).Order().SequenceEqual(Enumerable.Range(1, count));
}
