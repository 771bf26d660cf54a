namespace ShopJobs.Web.Desk;

/// <summary>Erase contents beside the logbooks for good.</summary>
/// <param name="Shown">Digest, in hex, of the lines that were shown: exactly that is erased.</param>
public sealed record EraseContents(string Shown);
