using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace ShopJobs.Domain.Summaries;

/// <summary>Writes a summary as the bytes that are issued, and reads them back.</summary>
public static class SummaryText
{
    /// <summary>Version of the written form.</summary>
    public const int Format = 1;

    private static readonly JsonSerializerOptions Json = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>The summary as UTF-8 JSON with the version of its form.</summary>
    public static byte[] Write(WorkSummary summary) => JsonSerializer.SerializeToUtf8Bytes(new Written(Format, summary), Json);

    /// <summary>Reads issued bytes. Throws <see cref="FormatException"/> for a form of a later version or bytes that are no summary.</summary>
    public static WorkSummary Read(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return JsonSerializer.Deserialize<Written>(bytes, Json) is { Format: Format, Summary: var summary }
                ? summary
                : throw new FormatException("The summary is written in a form this program does not know.");
        }
        catch (JsonException broken)
        {
            throw new FormatException("The bytes are no work summary.", broken);
        }
    }

    private sealed record Written(int Format, WorkSummary Summary);
}
