namespace ShopJobs.Web.Data;

/// <summary>One customer of the shop; may own several cars.</summary>
public readonly record struct CustomerId(Guid Value);

/// <summary>One part of the shop's catalogue.</summary>
public readonly record struct PartId(Guid Value);
