using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>The last entry of a logbook: its number and chain value. Number 0 stands for a logbook without entries.</summary>
public readonly record struct Head(long Number, EntryHash Hash)
{
    /// <summary>What the next entry must be, given its envelope's bytes.</summary>
    public Head Next(ReadOnlySpan<byte> envelope) => new(Number + 1, Hash.Next(envelope));
}
