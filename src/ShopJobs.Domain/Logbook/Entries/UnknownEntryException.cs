namespace ShopJobs.Domain.Logbook;

/// <summary>
/// An entry of a kind or version this program doesn't know. The logbook it is in may be read up to it and not be
/// written to; the entry is never skipped.
/// </summary>
public sealed class UnknownEntryException(string kind, int version)
    : Exception($"Entry kind \"{kind}\" version {version} is not known to this program. It was written by a newer one: update the program.")
{
    public string Kind { get; } = kind;

    public int Version { get; } = version;
}
