using System.Diagnostics.CodeAnalysis;

namespace ShopJobs.Domain.Logbook;

/// <summary>One logbook. Written <c>car:6f9619ff-8b86-d011-b42d-00c04fc964ff</c>: kind, colon, owner in lower case.</summary>
public readonly record struct LogbookId(LogbookKind Kind, Guid Owner)
{
    /// <summary>The logbook of a car.</summary>
    public static LogbookId Of(CarId car) => new(LogbookKind.Car, car.Value);

    /// <summary>The logbook of a torque tool.</summary>
    public static LogbookId Of(Tools.ToolId tool) => new(LogbookKind.Tool, tool.Value);

    /// <summary>The shop's own logbook: one database is one shop.</summary>
    public static readonly LogbookId Shop = new(LogbookKind.Shop, new Guid(1, 0, 0, new byte[8]));

    /// <summary>The kind as it is stored: <c>car</c>, <c>tool</c> or <c>shop</c>.</summary>
    public string KindName => Kind switch
    {
        LogbookKind.Car => "car",
        LogbookKind.Tool => "tool",
        LogbookKind.Shop => "shop",
        _ => throw new InvalidOperationException($"There is no logbook kind {(int)Kind}."),
    };

    /// <summary>Reads what <see cref="ToString"/> writes; false for anything else.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out LogbookId id)
    {
        id = default;
        var colon = text?.IndexOf(':', StringComparison.Ordinal) ?? -1;
        if (colon < 0 || !TryParseKind(text.AsSpan(0, colon), out var kind)
            || !Guid.TryParseExact(text.AsSpan(colon + 1), "D", out var owner))
        {
            return false;
        }

        id = new LogbookId(kind, owner);
        return true;
    }

    /// <summary>Reads a stored kind; false for anything but <c>car</c>, <c>tool</c> and <c>shop</c>.</summary>
    public static bool TryParseKind(ReadOnlySpan<char> text, out LogbookKind kind)
    {
        (var known, kind) = text switch
        {
            "car" => (true, LogbookKind.Car),
            "tool" => (true, LogbookKind.Tool),
            "shop" => (true, LogbookKind.Shop),
            _ => (false, default),
        };
        return known;
    }

    public override string ToString() => $"{KindName}:{Owner:D}";
}
