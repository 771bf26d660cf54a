namespace ShopJobs.Domain.Tools;

/// <summary>One torque tool or gauge of the shop.</summary>
public readonly record struct ToolId(Guid Value);
