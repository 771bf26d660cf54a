using System.Text;

namespace ShopJobs.Web.Data.Parts;

/// <summary>A part of the shop's catalogue. It is changed or taken out of use, never deleted.</summary>
public sealed class PartRow : TrackedRow
{
    public const int NumberLength = 40;
    public const int MakerLength = 40;
    public const int NameLength = 80;
    public const int FillsLength = 100;
    public const int ThreadLength = 40;
    public const int StrengthLength = 20;
    public const int CurrencyLength = 3;
    public const int KeyLength = 2 * (MakerLength + NumberLength);

    /// <summary>Largest price taken.</summary>
    public const decimal MostPrice = 9_999_999.99m;

    public PartId Id { get; init; }

    /// <summary>The maker's own number.</summary>
    public string Number { get; private set; } = "";

    public string Maker { get; private set; } = "";

    /// <summary>Maker and number as <see cref="KeyOf"/> writes them. No other part has the same.</summary>
    public string Key { get; private set; } = "";

    /// <summary>What the shop calls it.</summary>
    public string Name { get; set; } = "";

    /// <summary>Key of the joint kind that it fills; null where none is named.</summary>
    public string? Fills { get; set; }

    /// <summary>Its thread in the one spelling of records; null where it has none.</summary>
    public string? Thread { get; set; }

    /// <summary>Its strength class by name; null where none is stated.</summary>
    public string? Strength { get; set; }

    /// <summary>True where it is fitted once and never again.</summary>
    public bool SingleUse { get; set; }

    /// <summary>Price of one, from 0 to <see cref="MostPrice"/>; null where none is entered.</summary>
    public decimal? Price { get; set; }

    /// <summary>Three letters of the price's currency (ISO 4217); null without a price.</summary>
    public string? Currency { get; set; }

    /// <summary>When it was taken out of use, UTC; null while the shop orders it.</summary>
    public DateTime? RetiredAt { get; set; }

    /// <summary>Gives it its maker and number.</summary>
    public void Call(string maker, string number) => (Maker, Number, Key) = (maker, number, KeyOf(maker, number));

    /// <summary>
    /// Maker and number without case, in any alphabet, a letter with its accent in one piece (Unicode normalisation form C).
    /// </summary>
    public static string KeyOf(string maker, string number)
    {
        ArgumentNullException.ThrowIfNull(maker);
        ArgumentNullException.ThrowIfNull(number);
        return $"{maker}\n{number}".Normalize(NormalizationForm.FormC).ToUpperInvariant();
    }
}
