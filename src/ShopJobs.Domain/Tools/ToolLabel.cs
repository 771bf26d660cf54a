using System.Buffers.Binary;
using System.Globalization;

namespace ShopJobs.Domain.Tools;

/// <summary>
/// The code on a tool's printed label: T and eight digits, made from the tool's id, so that it never changes and needs no list. A letter
/// first, so that no scanner's reading of it passes for a torque. Two tools of one shop with the same code are unlikely (one shop in twenty
/// thousand with a hundred tools) and are told apart by hand.
/// </summary>
public static class ToolLabel
{
    private const int Digits = 8;
    private const ulong Codes = 100_000_000;

    /// <summary>The code of a tool, such as T40718293.</summary>
    public static string CodeOf(ToolId tool)
    {
        Span<byte> bytes = stackalloc byte[16];
        tool.Value.TryWriteBytes(bytes);
        return string.Create(CultureInfo.InvariantCulture, $"T{BinaryPrimitives.ReadUInt64LittleEndian(bytes) % Codes:D8}");
    }

    /// <summary>True for a text that a label may have given, in either case; <paramref name="code"/> as labels are printed.</summary>
    public static bool TryRead(string? text, out string code)
    {
        var read = text?.Trim() ?? "";
        code = read.ToUpperInvariant();
        return read.Length == Digits + 1 && read[0] is 'T' or 't' && read.Skip(1).All(char.IsAsciiDigit);
    }
}
