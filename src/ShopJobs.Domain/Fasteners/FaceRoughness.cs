namespace ShopJobs.Domain.Fasteners;

/// <summary>Roughness of the touching faces, as VDI 2230 table 5 groups it.</summary>
public enum FaceRoughness
{
    /// <summary>Rz below 10 micrometres.</summary>
    Fine,

    /// <summary>Rz 10 to below 40 micrometres.</summary>
    Medium,

    /// <summary>Rz 40 to below 160 micrometres.</summary>
    Coarse,
}
