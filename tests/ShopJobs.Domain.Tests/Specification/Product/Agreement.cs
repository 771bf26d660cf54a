using System.Text;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>Compares what a specification says with what the product says, question by question.</summary>
internal sealed class Agreement
{
    private readonly StringBuilder text = new();

    /// <summary>What they disagree on; null where they agree.</summary>
    public string? Disagrees => text.Length == 0 ? null : text.ToString();

    public Agreement On<T>(string question, T specification, T product)
    {
        if (!EqualityComparer<T>.Default.Equals(specification, product))
        {
            text.Append(text.Length == 0 ? "" : "; ").Append(FormattableString.Invariant($"{question}: {specification} by the rules, {product} by the product"));
        }

        return this;
    }
}
