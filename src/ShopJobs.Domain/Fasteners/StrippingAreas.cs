using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Area that shears off the bolt and area that shears out of the nut, over one engaged length.</summary>
public readonly record struct StrippingAreas(Area Bolt, Area Nut);
