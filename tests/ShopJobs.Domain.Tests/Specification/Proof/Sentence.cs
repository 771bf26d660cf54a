namespace ShopJobs.Domain.Tests.Specification.Proof;

/// <summary>One requirement of a specification: the number of its rule, its name, and the words of the rule it stands for.</summary>
internal sealed record Sentence(string Rule, string Id, string Words);
