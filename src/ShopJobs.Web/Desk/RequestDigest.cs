using System.Security.Cryptography;
using System.Text.Json;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Desk;

/// <summary>What was asked, digested, so that a command id used twice for different things is told apart.</summary>
internal static class RequestDigest
{
    /// <summary>SHA-256 over owner, kind of command and its fields. Texts kept outside the entries are not part of it.</summary>
    public static byte[] Of(object owner, object command) => SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(new
    {
        owner = owner.ToString(),
        kind = command.GetType().Name,
        fields = command is StartJob start
            ? JsonSerializer.SerializeToElement(new { start.Job, start.ProcedureDigest, start.RegisterDigest, start.Places })
            : JsonSerializer.SerializeToElement(command, command.GetType()),
    }));
}
