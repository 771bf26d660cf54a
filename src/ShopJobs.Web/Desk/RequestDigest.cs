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
    public static byte[] Of(object owner, object command) => SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(new
    {
        owner = owner.ToString(),
        kind = command.GetType().Name,
        fields = command is StartJob start
            ? JsonSerializer.SerializeToElement(new { start.Job, start.ProcedureDigest, start.RegisterDigest, start.Places }, Json)
            : JsonSerializer.SerializeToElement(command, command.GetType(), Json),
    }));

    /// <summary>A text gets a new salt each time it is sent, so its digest says nothing about whether the request is the same.</summary>
    private sealed class WithoutContent : JsonConverter<ContentDigest>
    {
        public override ContentDigest Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            throw new NotSupportedException("Requests are digested, never read back.");

        public override void Write(Utf8JsonWriter writer, ContentDigest value, JsonSerializerOptions options) => writer.WriteStringValue("content");
    }
}
