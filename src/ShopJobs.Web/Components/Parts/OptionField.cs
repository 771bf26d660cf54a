using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Fasteners;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Components.Parts;

/// <summary>How one stated value of an option is asked for.</summary>
/// <param name="Property">Which value.</param>
/// <param name="Label">What it is called on the page.</param>
/// <param name="Hint">How it is written, or what to look for.</param>
public sealed record OptionField(OptionProperty Property, string Label, string Hint, Func<string, string?> ProblemOf)
{
    /// <summary>Every value, in the order it is asked.</summary>
    public static IReadOnlyList<OptionField> All { get; } =
    [
        new(OptionProperty.Thread, "Thread", "For example M12x1.5 or 1/2-20 UNF.", By<ThreadSize>(ThreadSize.TryParse)),
        new(OptionProperty.Strength, "Strength class", "10.9, A2-70, SAE 8. Of a part that is only said to be like a class, write that class and pick “claimed, not proven”.", By<StrengthClass>(StrengthClass.TryParse)),
        new(OptionProperty.Length, "Length from its face to the end", "From under the head, or under the shoulder of a stud; chamfer taken off. For example 42 mm.", By<UnitsNet.Length>(PartText.Length)),
        new(OptionProperty.Seat, "Face under head or shoulder", "flat, cone 60, ball R14.", By<Domain.Parts.SeatForm>(PartText.Seat)),
        new(OptionProperty.Torque, "Torque of its instruction", "Range or one value with its unit: 60 to 95 N·m, 80 N·m.", By<TorqueRange>(PartText.TorqueRange)),
        new(OptionProperty.Jam, "Jam torque of the two nuts", "With its unit: 90 N·m.", By<EnteredTorque>(PartText.Torque)),
        new(OptionProperty.Condition, "Threads and faces", "The condition that its torque holds for.", By<ThreadCondition>(PartText.Condition))
        {
            Choices = [.. Enum.GetValues<ThreadCondition>().Select(condition => (condition.ToString(), ClampWords.Of(condition)))],
        },
        new(OptionProperty.NutSeat, "Face of its nut", "flat, cone 60, ball R14.", By<Domain.Parts.SeatForm>(PartText.Seat)),
        new(OptionProperty.NutThread, "Full thread in its nut", "For example 20 mm.", By<UnitsNet.Length>(PartText.Length)),
        new(OptionProperty.NutEnd, "End of its nut", "open, or the depth of a closed nut from the start of its thread: 24 mm.", By<Domain.Parts.NutEnd>(PartText.NutEnd)),
        new(OptionProperty.NutClass, "Class of its nut", "As marked on it by ISO 898-2: 10, 12.", By<NutClass>(PartText.NutClass)),
        new(OptionProperty.Pieces, "Pieces in a kit", "A whole number.", By<int>(PartText.Pieces)),
        new(OptionProperty.Price, "Price of a kit", "With its currency: 84.50 EUR.", By<Domain.Parts.Price>(PartText.Price)),
    ];

    /// <summary>Values to pick from, with their words; null where it is typed.</summary>
    public IReadOnlyList<(string Value, string Words)>? Choices { get; init; }

    /// <summary>True for a value of the nut that a kit brings.</summary>
    public bool IsOfNut => Property is OptionProperty.NutSeat or OptionProperty.NutThread or OptionProperty.NutEnd or OptionProperty.NutClass;

    /// <summary>The field of a value.</summary>
    public static OptionField Of(OptionProperty property) => All.First(field => field.Property == property);

    private static Func<string, string?> By<T>(PartReading<T> read) => text => read(text, out _, out var problem) ? null : problem;
}
