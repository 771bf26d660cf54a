using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>What a part is, in the spelling that is stored. Two that are equal say the same.</summary>
public sealed record PartValues(
    string Number, string Maker, string Name, string? Fills, string? Thread, string? Strength, bool SingleUse, decimal? Price, string? Currency)
{
    /// <summary>Of a form that <see cref="PartFormValidator"/> has passed.</summary>
    public static PartValues Of(PartForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        var (price, currency) = string.IsNullOrWhiteSpace(form.Price) ? (null, null)
            : PriceText.Read(form.Price, form.Currency, out var amount, out var letters, out var problem) ? ((decimal?)amount, letters)
            : throw new ArgumentException(problem, nameof(form));
        return new(
            OneLine(form.Number),
            OneLine(form.Maker),
            OneLine(form.Name),
            form.Fills.Length == 0 ? null : form.Fills,
            string.IsNullOrWhiteSpace(form.Thread) ? null : ThreadSize.Parse(form.Thread).ToString(),
            string.IsNullOrWhiteSpace(form.Strength) ? null : StrengthClass.Parse(form.Strength).Name,
            form.SingleUse,
            price,
            currency);
    }

    /// <summary>What a row of the catalogue says.</summary>
    public static PartValues Of(PartRow part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return new(part.Number, part.Maker, part.Name, part.Fills, part.Thread, part.Strength, part.SingleUse, part.Price, part.Currency);
    }

    /// <summary>Puts it into a row.</summary>
    public void WriteTo(PartRow part)
    {
        ArgumentNullException.ThrowIfNull(part);
        part.Call(Maker, Number);
        (part.Name, part.Fills, part.Thread, part.Strength) = (Name, Fills, Thread, Strength);
        (part.SingleUse, part.Price, part.Currency) = (SingleUse, Price, Currency);
    }

    /// <summary>Without blanks around it, and each blank and line break inside as one blank.</summary>
    public static string OneLine(string? text) =>
        Look.Typed.Clean(string.Join(' ', (text ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
}
