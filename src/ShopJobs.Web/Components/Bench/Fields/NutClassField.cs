using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A property class of nuts.</summary>
public static class NutClassField
{
    private static readonly string[] Names = ["04", "05", "5", "6", "8", "9", "10", "12"];

    /// <summary>The field; it may stay empty.</summary>
    public static ChoiceField<NutClass> New() => new("nut", "Class of the nut",
        [.. Names.Select(name => NutClass.Parse(name)).Select(nut => new BenchChoice<NutClass>(nut.Name, nut.IsThin ? $"{nut}, thin" : nut.Name, nut))])
    {
        IsOptional = true,
        Hint = "As marked on it (ISO 898-2).",
    };
}
