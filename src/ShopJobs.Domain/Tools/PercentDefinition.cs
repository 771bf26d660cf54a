namespace ShopJobs.Domain.Tools;

/// <summary>What a certificate's percent means. Two conventions are in use with opposite signs.</summary>
public enum PercentDefinition
{
    /// <summary>(indicated - reference)/reference, ISO 6789 (from memory): a tool that delivers too little is positive.</summary>
    Deviation,

    /// <summary>(reference - set)/set: a tool that delivers too little is negative.</summary>
    Delivered,
}
