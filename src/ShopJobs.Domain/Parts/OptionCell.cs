namespace ShopJobs.Domain.Parts;

/// <summary>What stands in one cell of a comparison: a stated value, a figure, or why there is neither.</summary>
public abstract record OptionCell
{
    private OptionCell()
    {
    }

    /// <summary>What is read in the cell; two cells are alike when it is the same.</summary>
    public abstract string Text { get; }

    /// <summary>The maker's value and the line it stands in.</summary>
    public sealed record Given(string Value, string Source) : OptionCell
    {
        /// <inheritdoc/>
        public override string Text => Value;
    }

    /// <summary>The maker does not state it: a value of its own, and no zero.</summary>
    public sealed record NotStated : OptionCell
    {
        /// <inheritdoc/>
        public override string Text => "not stated by the maker";
    }

    /// <summary>A figure worked out from stated values.</summary>
    public sealed record Computed(string Value) : OptionCell
    {
        /// <inheritdoc/>
        public override string Text => Value;

        /// <summary>The figure over what it must not pass, 1 = the limit; null where it has no limit. Infinite where nothing is left.</summary>
        public double? Share { get; init; }

        /// <summary>Completes "80 % of ...".</summary>
        public string Of { get; init; } = "";
    }

    /// <summary>Not worked out; the reason completes "not computed: ...".</summary>
    public sealed record NotComputed(string Reason) : OptionCell
    {
        /// <inheritdoc/>
        public override string Text => $"not computed: {Reason}";
    }

    internal static OptionCell Stated<T>(Stated<T>? stated, Func<T, string>? words = null)
        where T : notnull => stated is null
            ? new NotStated()
            : new Given(words is null ? stated.Value.ToString()! : words(stated.Value), stated.Source);
}
