namespace ShopJobs.Domain.Tests.Reference;

/// <summary>Kinds of rows that nothing checks, each with the reason. None whose rows were seen in their source.</summary>
internal static class NotCovered
{
    /// <summary>At most this share of all rows.</summary>
    public const double Most = 0.03;

    private static readonly Dictionary<(string File, string Kind), string> Reasons = [];

    public static string? Reason(string file, string kind) => Reasons.GetValueOrDefault((file, kind));
}
