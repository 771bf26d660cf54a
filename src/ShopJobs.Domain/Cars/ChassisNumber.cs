namespace ShopJobs.Domain.Cars;

/// <summary>What can be said of a chassis number.</summary>
public enum ChassisForm
{
    /// <summary>A vehicle identification number whose check digit agrees.</summary>
    Checked,

    /// <summary>A vehicle identification number from a part of the world that asks a check digit, and it does not agree: one character is wrong.</summary>
    CheckFails,

    /// <summary>A vehicle identification number from a part of the world that asks no check digit.</summary>
    NoCheckAsked,

    /// <summary>A chassis number of another form: an older car, a kit, a car built for racing.</summary>
    Other,
}

/// <summary>
/// The number on a car's chassis. One of 17 characters, digits and letters without I, O and Q, has the form of ISO 3779 (from memory). The
/// check digit at the ninth place is that of 49 CFR 565.15(c), read as reprinted; it is asked where the first character is 1 to 5, North
/// America by ISO 3780 (from memory).
/// </summary>
/// <param name="Text">Capital letters and digits, without blanks and dashes between them.</param>
public sealed record ChassisNumber(string Text, ChassisForm Form)
{
    /// <summary>The most characters kept.</summary>
    public const int Most = 30;

    private const int VinLength = 17;
    private static readonly int[] Weights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

    /// <summary>
    /// Reads a number as it was typed: small letters, blanks and dashes are taken. Null where nothing is left of it, it is longer than
    /// <see cref="Most"/>, or a character is neither letter nor digit nor one of . / which older plates have.
    /// </summary>
    public static ChassisNumber? Read(string? typed)
    {
        var text = string.Concat((typed ?? "").Where(letter => !char.IsWhiteSpace(letter) && letter != '-')).ToUpperInvariant();
        return text.Length is 0 or > Most || !text.All(letter => char.IsAsciiLetterUpper(letter) || char.IsAsciiDigit(letter) || letter is '.' or '/')
            ? null
            : new ChassisNumber(text, FormOf(text));
    }

    /// <summary>The check digit that 17 characters ask for: 0 to 9, or X for ten.</summary>
    public static char CheckDigit(string vin)
    {
        ArgumentNullException.ThrowIfNull(vin);
        if (!IsVin(vin))
        {
            throw new ArgumentException($"“{vin}” has not the form of a vehicle identification number.", nameof(vin));
        }

        var rest = vin.Select((letter, at) => ValueOf(letter) * Weights[at]).Sum() % 11;
        return rest == 10 ? 'X' : (char)('0' + rest);
    }

    private static ChassisForm FormOf(string text) =>
        !IsVin(text) ? ChassisForm.Other
        : text[0] is < '1' or > '5' ? ChassisForm.NoCheckAsked
        : CheckDigit(text) == text[8] ? ChassisForm.Checked
        : ChassisForm.CheckFails;

    private static bool IsVin(string text) =>
        text.Length == VinLength && text.All(letter => (char.IsAsciiDigit(letter) || char.IsAsciiLetterUpper(letter)) && letter is not ('I' or 'O' or 'Q'));

    // A to H are 1 to 8, J to R 1 to 9 and S to Z 2 to 9, each letter at its own place of its row.
    private static int ValueOf(char letter) => letter switch
    {
        >= '0' and <= '9' => letter - '0',
        <= 'H' => letter - 'A' + 1,
        <= 'R' => letter - 'J' + 1,
        _ => letter - 'S' + 2,
    };
}
