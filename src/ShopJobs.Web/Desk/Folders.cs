using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>How the logbooks of cars and tools become states.</summary>
internal static class Folders
{
    public static readonly Folder<CarState> Car = new("car", CarState.Empty, (state, envelope) => state.Apply(Read(envelope)));

    public static readonly Folder<ToolState> Tool = new("tool", ToolState.Empty, (state, envelope) => state.Apply(Read(envelope)));

    public static readonly Folder<ShopState> Shop = new("shop", ShopState.Empty, (state, envelope) => state.Apply(Read(envelope)));

    public static LogbookId LogbookOf(CarId car) => new(LogbookKind.Car, car.Value);

    public static LogbookId LogbookOf(ToolId tool) => new(LogbookKind.Tool, tool.Value);

    /// <summary>The entry in an envelope, with its number, instant and person.</summary>
    public static Recorded Read(Envelope envelope) => new(
        envelope.Number, envelope.At, envelope.Person, EntryCodec.Decode(envelope.Kind, envelope.Version, envelope.Payload.Span));
}
