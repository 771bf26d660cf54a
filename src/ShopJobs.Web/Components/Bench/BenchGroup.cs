namespace ShopJobs.Web.Components.Bench;

/// <summary>Cards that answer questions of one kind.</summary>
public sealed record BenchGroup(string Title, IReadOnlyList<BenchCard> Cards);
