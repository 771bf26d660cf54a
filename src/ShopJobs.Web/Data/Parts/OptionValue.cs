using ShopJobs.Domain.Parts;

namespace ShopJobs.Web.Data.Parts;

/// <summary>One stated value of an option, as it was written, with the line it was read from.</summary>
public sealed class OptionValue
{
    public const int TextLength = 60;
    public const int SourceLength = 120;

    public PartOptionId OptionId { get; init; }

    public OptionProperty Property { get; init; }

    public required string Text { get; set; }

    public required string Source { get; set; }
}
