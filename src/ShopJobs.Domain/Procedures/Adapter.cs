using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Procedures;

/// <summary>What sits between wrench and fastener, such as a crowfoot or a hook spanner, and so changes what the wrench is set to.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Setting">Its effective length and angle, and the length of the wrench that it goes on.</param>
/// <param name="Source">Where the lengths come from.</param>
public sealed record Adapter(string Name, AdapterSetting Setting, Provenance Source);
