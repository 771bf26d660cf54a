using System.Globalization;

namespace ShopJobs.Web.Components.Bench;

/// <summary>
/// A computed figure as it is read off: three significant figures, and more only where three would put it on the wrong side of what
/// it is compared with.
/// </summary>
public static class ShownFigure
{
    /// <summary>Significant figures of a computed value: friction, wrench and measuring are no better known.</summary>
    public const int Usual = 3;

    private const int Most = 9;

    /// <summary>The figure, without zeros behind its last decimal: "73.3", "81", "0.254".</summary>
    /// <param name="value">What was computed.</param>
    /// <param name="besides">What it is compared with: the figure stands to each as the value does.</param>
    public static string Of(decimal value, params IReadOnlyList<decimal> besides)
    {
        ArgumentNullException.ThrowIfNull(besides);
        var figures = Usual;
        while (figures < Most && besides.Any(other => Misleads(value, other, figures)))
        {
            figures++;
        }

        return Text(Round(value, figures));
    }

    /// <summary>As <see cref="Of(decimal, IReadOnlyList{decimal})"/>, for what was computed in double precision.</summary>
    public static string Of(double value) => Of((decimal)value);

    /// <summary>The end of a range, rounded so that it never permits more than it does.</summary>
    public static string Inwards(decimal end, bool isLower) =>
        Text(Round(end, Usual, isLower ? MidpointRounding.ToPositiveInfinity : MidpointRounding.ToNegativeInfinity));

    /// <summary>A value to so many significant figures, at least one.</summary>
    public static decimal Round(decimal value, int figures, MidpointRounding rounding = MidpointRounding.AwayFromZero)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(figures);
        if (value == 0)
        {
            return 0;
        }

        var before = (int)Math.Floor(Math.Log10((double)Math.Abs(value))) + 1;
        if (figures >= before)
        {
            return Math.Round(value, Math.Min(figures - before, 28), rounding);
        }

        var cut = (decimal)Math.Pow(10, before - figures);
        return Math.Round(value / cut, rounding) * cut;
    }

    // Both as they would be said at so many figures, and the figure beside the other as it was entered.
    private static bool Misleads(decimal value, decimal other, int figures)
    {
        var (shown, side) = (Round(value, figures), value.CompareTo(other));
        return shown.CompareTo(other) != side || shown.CompareTo(Round(other, figures)) != side;
    }

    private static string Text(decimal value) => value.ToString("0.############", CultureInfo.InvariantCulture);
}
