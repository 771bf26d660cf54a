using System.Buffers;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>What was asked, digested, so that a command id used twice for different things is told apart.</summary>
internal static class RequestDigest
{
    private static readonly JsonSerializerOptions Json = new() { Converters = { new WithoutContent() } };

    /// <summary>SHA-256 over owner, kind of command and its fields. Texts kept outside the entries are not part of it.</summary>
    public static byte[] Of(object owner, object command)
    {
        var bytes = new ArrayBufferWriter<byte>(512);
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            json.WriteString("owner", owner.ToString());
            json.WriteString("kind", command.GetType().Name);
            json.WritePropertyName("fields");
            if (command is StartJob start)
            {
                JsonSerializer.Serialize(json, new { start.Job, start.ProcedureDigest, start.RegisterDigest, start.Places }, Json);
            }
            else
            {
                JsonSerializer.Serialize(json, command, command.GetType(), Json);
            }

            json.WriteEndObject();
        }

        return SHA256.HashData(bytes.WrittenSpan);
    }

    /// <summary>A text gets a new salt each time it is sent, so its digest says nothing about whether the request is the same.</summary>
    private sealed class WithoutContent : JsonConverter<ContentDigest>
    {
        public override ContentDigest Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("Requests are digested, never read back.");

        public override void Write(Utf8JsonWriter writer, ContentDigest value, JsonSerializerOptions options) => writer.WriteStringValue("content");
    }
}
