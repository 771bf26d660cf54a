namespace ShopJobs.Domain.Parts;

/// <summary>One option of a comparison.</summary>
public readonly record struct PartOptionId(Guid Value);
