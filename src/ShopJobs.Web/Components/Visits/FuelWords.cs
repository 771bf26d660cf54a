namespace ShopJobs.Web.Components.Visits;

/// <summary>A fuel gauge in words, in eighths.</summary>
internal static class FuelWords
{
    public static IReadOnlyList<(int Eighths, string Words)> All { get; } =
        [(0, "empty"), (1, "one eighth"), (2, "a quarter"), (3, "three eighths"), (4, "half"), (5, "five eighths"), (6, "three quarters"), (7, "seven eighths"), (8, "full")];
}
