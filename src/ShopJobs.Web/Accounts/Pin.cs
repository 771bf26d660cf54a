using System.Globalization;
using System.Security.Cryptography;

namespace ShopJobs.Web.Accounts;

/// <summary>
/// A PIN is six digits made by the program (NIST SP 800-63B rev. 3, 5.1.1: a random PIN of at least six digits).
/// </summary>
public static class Pin
{
    public const int Length = 6;

    /// <summary>Said where fewer or others were typed: that is no try.</summary>
    public const string SixDigits = "Type the six digits of your PIN.";

    public static bool LooksLikeOne(string? pin) => pin is { Length: Length } && pin.All(char.IsAsciiDigit);

    /// <summary>Six random digits, drawn again while they are easily guessed.</summary>
    public static string Random()
    {
        string pin;
        do
        {
            pin = RandomNumberGenerator.GetInt32(1_000_000).ToString("D6", CultureInfo.InvariantCulture);
        }
        while (IsEasy(pin));
        return pin;
    }

    /// <summary>Fewer than four different digits, or a run up or down.</summary>
    public static bool IsEasy(string pin)
    {
        var steps = pin.Zip(pin.Skip(1), (left, right) => right - left).Distinct().ToList();
        return pin.Distinct().Count() < 4 || (steps.Count == 1 && Math.Abs(steps[0]) == 1);
    }
}
