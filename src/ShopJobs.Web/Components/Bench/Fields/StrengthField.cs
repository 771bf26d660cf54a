using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A strength class: "10.9", "A2-70", "SAE 8".</summary>
public sealed class StrengthField : BenchField<StrengthClass>
{
    /// <summary>The class of the bolt or stud.</summary>
    public StrengthField()
        : base("class", "Strength class of the bolt or stud")
    {
        Hint = "As marked on it: 8.8, 10.9, A2-70, SAE 8.";
        Example = "10.9";
    }

    /// <inheritdoc/>
    public override string InputMode => "text";

    private protected override bool TryRead(string text, BenchUnits units, out StrengthClass value, out string? problem)
    {
        var read = StrengthClass.TryParse(text, out var strength, out problem);
        value = strength!;
        return read;
    }
}
