using ShopJobs.Domain.Parts;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.Parts;

/// <summary>An option as the lead types it. The id is made with the form, so sending twice makes one option.</summary>
public sealed class OptionForm
{
    public PartOptionId Id { get; init; } = new(Guid.NewGuid());

    /// <summary>Revision of the row the form was filled from; empty for a new option.</summary>
    public Guid Revision { get; init; }

    public string Name { get; set; } = "";

    public string Maker { get; set; } = "";

    /// <summary>Where every value stands that names no line of its own.</summary>
    public string Source { get; set; } = "";

    public StrengthEvidence Evidence { get; set; } = StrengthEvidence.SaidOnly;

    /// <summary>True where the kit brings its own nut.</summary>
    public bool OwnNut { get; set; }

    public Dictionary<OptionProperty, TypedValue> Values { get; } = Enum.GetValues<OptionProperty>().ToDictionary(property => property, _ => new TypedValue());

    /// <summary>The line a value was read from: its own, else the one of them all.</summary>
    public string SourceOf(OptionProperty property) => string.IsNullOrWhiteSpace(Values[property].Source) ? Source : Values[property].Source;

    public static OptionForm Of(OptionRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        var form = new OptionForm
        {
            Id = row.Id,
            Revision = row.Revision,
            Name = row.Name,
            Maker = row.Maker,
            Source = row.Values.CountBy(value => value.Source).OrderByDescending(source => source.Value).FirstOrDefault().Key ?? "",
            Evidence = row.Evidence,
            OwnNut = row.OwnNut,
        };
        foreach (var (property, typed) in form.Values)
        {
            var value = row.Values.Find(value => value.Property == property);
            typed.NotStated = value is null;
            typed.Text = value?.Text ?? "";
            typed.Source = value is null || value.Source == form.Source ? "" : value.Source;
        }

        return form;
    }
}

/// <summary>One value as it is typed: a text with its source, or that the maker does not state it.</summary>
public sealed class TypedValue
{
    public string Text { get; set; } = "";

    /// <summary>Its own source; empty where it is the one of them all.</summary>
    public string Source { get; set; } = "";

    public bool NotStated { get; set; }
}
