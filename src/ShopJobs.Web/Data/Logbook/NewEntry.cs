using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>An entry decided on; number, instant, person, device and command are put to it when it is appended.</summary>
/// <param name="Payload">One UTF-8 JSON object.</param>
/// <param name="Keys">What <see cref="EntryKeysOf"/> gives for this kind, version and payload.</param>
public sealed record NewEntry(LogbookId Logbook, string Kind, int Version, ReadOnlyMemory<byte> Payload, EntryKeys Keys);
