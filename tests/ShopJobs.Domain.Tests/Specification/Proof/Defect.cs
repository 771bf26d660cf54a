namespace ShopJobs.Domain.Tests.Specification.Proof;

/// <summary>A fault put into a specification, and the requirement that has to notice it.</summary>
internal sealed record Defect(string Name, string CaughtBy);
