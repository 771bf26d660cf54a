using System.Globalization;
using System.Text;

namespace ShopJobs.Web.Names;

/// <summary>Characters that nobody sees, or that turn the direction of writing round. No name has one.</summary>
public static class UnseenLetters
{
    // Blank though their category does not say so: joiner, fillers, vowel and variation selectors, the empty braille cell
    // (Default_Ignorable_Code_Point of the Unicode Character Database, from memory; the braille cell is common practice, no source).
    private static readonly HashSet<int> Blank = [0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x180B, 0x180C, 0x180D, 0x180F, 0x2800, 0x3164, 0xFFA0];

    /// <summary>Where the first one stands in a text, counted in UTF-16 units from 0; null where there is none.</summary>
    public static int? FirstIn(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var place = 0;
        while (place < text.Length)
        {
            if (Rune.DecodeFromUtf16(text.AsSpan(place), out var letter, out var length) != System.Buffers.OperationStatus.Done || IsUnseen(letter))
            {
                return place;
            }

            place += length;
        }

        return null;
    }

    private static bool IsUnseen(Rune letter) => Rune.GetUnicodeCategory(letter) switch
    {
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
        _ => Blank.Contains(letter.Value) || letter.Value is (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0100 and <= 0xE01EF),
    };
}
