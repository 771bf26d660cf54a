namespace ShopJobs.Domain.Tests.Reference.Statements;

/// <summary>A rule of fastening as a document states it, shortened; shown with its source beside what it bears on.</summary>
/// <param name="Topic">What it is about, such as "engagement".</param>
/// <param name="Statement">The rule with its figures.</param>
/// <param name="Source">The document and how it is known.</param>
public sealed record PublishedRule(string Topic, string Statement, string Source);
