using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Components.Look;
using UnitsNet;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Reads one value of a part as people write it; false with the problem in plain words.</summary>
internal delegate bool PartReading<T>(string text, [NotNullWhen(true)] out T? value, out string? problem);

/// <summary>The values of parts and wheel stacks as people write them.</summary>
internal static partial class PartText
{
    /// <summary>No part of a stack is longer, in mm: beyond it a slip is likelier (common practice, no source).</summary>
    private const decimal LongestMm = 500;

    private const int MostPieces = 10_000;

    /// <summary>A length above 0: "42", "42.5 mm", "1.65 in". Without a unit it is in mm.</summary>
    public static bool Length(string text, out Length value, out string? problem) =>
        LengthOrNone(text, out value, out problem) && (problem = value.Millimeters > 0 ? null : "It must be above 0.") is null;

    /// <summary>As <see cref="Length"/>, or 0 where there is none.</summary>
    public static bool LengthOrNone(string text, out Length value, out string? problem)
    {
        value = default;
        if (TypedNumber.Read(text, "42.5 mm", out var unit, out problem) is not { } number)
        {
            return false;
        }

        var millimetres = unit.ToUpperInvariant() switch
        {
            "" or "MM" => number,
            "IN" or "INCH" or "\"" => number * 25.4m,
            _ => -1,
        };
        problem = millimetres < 0 ? $"{TypedNumber.Shown(text)} is no length known here: write millimetres or inches, for example 42.5 mm."
            : millimetres > LongestMm ? $"{TypedNumber.Shown(text)} is longer than anything in a wheel. Read it again."
            : null;
        value = UnitsNet.Length.FromMillimeters((double)millimetres);
        return problem is null;
    }

    /// <summary>A length as it was entered, with the unit that it was read in where none was written.</summary>
    public static string LengthWords(string entered) => char.IsAsciiDigit(entered[^1]) ? $"{entered} mm" : entered;

    /// <summary>One torque with its unit, above 0.</summary>
    public static bool Torque(string text, out EnteredTorque value, out string? problem)
    {
        if (!EnteredTorque.TryParse(text, TorqueUnit.NewtonMetre, out value, out problem))
        {
            return false;
        }

        problem = value.Value == 0 ? "A torque is above 0. If the maker gives none, tick not stated."
            : TypedTorque.TooMuch(value) is { } tooMuch ? tooMuch
            : char.IsAsciiDigit(text[^1]) ? $"{TypedNumber.Shown(text)} has no unit: write it as the instruction does, for example {text} N·m."
            : null;
        return problem is null;
    }

    /// <summary>What the instruction permits: "60 to 95 N·m", "60-95 Nm", or its one value, "80 N·m".</summary>
    public static bool TorqueRange(string text, [NotNullWhen(true)] out TorqueRange? value, out string? problem)
    {
        value = null;
        var cut = Between().Match(text);
        if (!cut.Success)
        {
            value = Torque(text, out var one, out problem) ? new TorqueRange(one, one) : null;
            return value is not null;
        }

        if (!Torque(text[(cut.Index + cut.Length)..], out var most, out problem)
            || !EnteredTorque.TryParse(text[..cut.Index].Trim(), most.Unit, out var least, out problem))
        {
            return false;
        }

        if (least.Value == 0)
        {
            problem = "The least torque is above 0: write what the instruction states.";
            return false;
        }

        return Domain.Fasteners.TorqueRange.TryCreate(least, most, out value, out problem);
    }

    /// <summary>"flat", "cone 60", "60° cone", "ball R14".</summary>
    public static bool Seat(string text, [NotNullWhen(true)] out SeatForm? value, out string? problem)
    {
        var match = SeatWords().Match(text);
        var size = match.Groups["size"].Success
            ? decimal.Parse(match.Groups["size"].Value.Replace(',', '.'), System.Globalization.CultureInfo.InvariantCulture)
            : 0;
        (value, problem) = (match.Groups["kind"].Value.ToUpperInvariant(), match.Groups["size"].Success) switch
        {
            ("FLAT", false) => (SeatForm.Flat, (string?)null),
            ("CONE", true) when size is >= 30 and <= 170 => (SeatForm.Cone(size), null),
            ("CONE", true) => (null, "A cone has a whole angle from 30 to 170 degrees, for example cone 60."),
            ("BALL", true) when size is > 0 and <= SeatForm.LargestRadius => (SeatForm.Ball(size), null),
            ("BALL", true) => (null, $"A ball has a radius above 0 and up to {SeatForm.LargestRadius} mm, for example ball R14."),
            _ => (null, $"{TypedNumber.Shown(text)} is no seat known here: write flat, cone with its whole angle (cone 60), or ball with its radius (ball R14)."),
        };
        return value is not null;
    }

    /// <summary>"open", or the depth of a closed nut: "24 mm", "closed 24 mm".</summary>
    public static bool NutEnd(string text, out NutEnd value, out string? problem)
    {
        value = default;
        if (ClosedDepth(text) is not { } depth)
        {
            problem = null;
            return true;
        }

        if (!Length(depth, out var length, out problem))
        {
            problem = depth.Length > 0 && char.IsAsciiDigit(depth[0]) ? problem : "Write open, or the depth of the closed nut from the start of its thread to its bottom, for example 24 mm.";
            return false;
        }

        value = new NutEnd(length);
        return true;
    }

    /// <summary>What is written of the depth of a closed nut, as it is written; null for an open one.</summary>
    public static string? ClosedDepth(string text) => text.Equals("open", StringComparison.OrdinalIgnoreCase) ? null
        : text.StartsWith("closed", StringComparison.OrdinalIgnoreCase) ? text[6..].TrimStart(',', ' ')
        : text;

    /// <summary>Pieces in a kit, a whole number from 1.</summary>
    public static bool Pieces(string text, out int value, out string? problem)
    {
        value = 0;
        if (TypedNumber.Read(text, "10", out var rest, out problem) is not { } number)
        {
            return false;
        }

        problem = rest is not ("" or "pieces" or "pcs") || number != Math.Truncate(number) ? $"{TypedNumber.Shown(text)} is no count: write whole pieces, for example 10."
            : number is < 1 or > MostPieces ? $"A kit has from 1 to {MostPieces} pieces."
            : null;
        value = problem is null ? (int)number : 0;
        return problem is null;
    }

    /// <summary>"84.50 EUR": an amount above 0 with at most two decimals, and the three letters of its currency.</summary>
    public static bool Price(string text, out Price value, out string? problem)
    {
        value = default;
        if (TypedNumber.Read(text, "84.50 EUR", out var currency, out problem) is not { } amount)
        {
            return false;
        }

        var letters = currency.ToUpperInvariant();
        problem = letters.Length != 3 || !letters.All(char.IsAsciiLetterUpper) ? "Write the currency after the amount in three letters, for example 84.50 EUR."
            : amount == 0 ? "A price is above 0. If the maker or seller gives none, tick not stated."
            : amount > Domain.Parts.Price.Largest ? "That is more than a kit of fasteners costs. Read it again."
            : decimal.Round(amount, 2) != amount ? "Write the price with at most two decimals."
            : null;
        value = problem is null ? new Price(amount, letters) : default;
        return problem is null;
    }

    /// <summary>A condition by its name.</summary>
    public static bool Condition(string text, out ThreadCondition value, out string? problem)
    {
        problem = Enum.TryParse(text, out value) && Enum.IsDefined(value) ? null : "Pick the condition of threads and faces that the torque holds for.";
        return problem is null;
    }

    /// <summary>A nut class of ISO 898-2.</summary>
    public static bool NutClass(string text, [NotNullWhen(true)] out NutClass? value, out string? problem)
    {
        problem = Domain.Fasteners.NutClass.TryParse(text, out value)
            ? null
            : $"{TypedNumber.Shown(text)} is no nut class of ISO 898-2: write 5, 6, 8, 9, 10 or 12.";
        return value is not null;
    }

    // A sign at the start is no range: at least a digit stands before the mark.
    [GeneratedRegex("(?<=[0-9][^0-9]{0,8})(\\.\\.+| ?[-–] ?| to )(?=[0-9])", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Between();

    [GeneratedRegex("^(?:(?<kind>flat)|(?<kind>cone|ball) *r? *(?<size>[0-9]{1,3}([.,][0-9]{1,2})?) *(?:°|deg|mm)?|(?<size>[0-9]{1,3}([.,][0-9]{1,2})?) *(?:°|deg|mm)? *(?<kind>cone|ball))$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex SeatWords();
}
