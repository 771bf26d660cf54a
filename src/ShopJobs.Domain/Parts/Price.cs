namespace ShopJobs.Domain.Parts;

/// <summary>A price as it was offered, above 0: a decimal amount and the three letters of its currency (ISO 4217), never converted.</summary>
public readonly record struct Price
{
    /// <summary>Largest amount taken.</summary>
    public const decimal Largest = 1_000_000;

    /// <summary>Refuses an amount not above 0 or above <see cref="Largest"/>, and anything but three capital letters.</summary>
    public Price(decimal amount, string currency)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(amount);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(amount, Largest);
        ArgumentNullException.ThrowIfNull(currency);
        if (currency.Length != 3 || !currency.All(char.IsAsciiLetterUpper))
        {
            throw new ArgumentException("A currency is three capital letters, such as EUR.", nameof(currency));
        }

        Amount = amount;
        Currency = currency;
    }

    /// <summary>The amount, above 0.</summary>
    public decimal Amount { get; }

    /// <summary>Three letters, such as "EUR".</summary>
    public string Currency { get; }

    /// <summary>For example "189.50 EUR".</summary>
    public override string ToString() => FormattableString.Invariant($"{Amount:0.00} {Currency}");
}
