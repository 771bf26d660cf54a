using FluentValidation;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.Instruments;

/// <summary>An instrument as it is typed in.</summary>
public sealed class InstrumentForm
{
    public ToolId Id { get; init; } = new(Guid.NewGuid());

    public string Name { get; set; } = "";

    public string Serial { get; set; } = "";

    public InstrumentKind Kind { get; set; }

    public static InstrumentForm Of(ToolId id, Instrument instrument) => new() { Id = id, Name = instrument.Name, Serial = instrument.Serial, Kind = instrument.Kind };
}

/// <summary>What an instrument needs before it is entered.</summary>
public sealed class InstrumentFormValidator : AbstractValidator<InstrumentForm>
{
    public const int NameLength = 40;
    public const int SerialLength = 60;

    public InstrumentFormValidator()
    {
        RuleFor(form => form.Name).Must(text => Typed.Clean(text).Length > 0).WithMessage("Give it a short name, such as G2.")
            .MaximumLength(NameLength).WithMessage($"It takes at most {NameLength} letters. Shorten it.").ReadsPlainly();
        RuleFor(form => form.Serial).MaximumLength(SerialLength).WithMessage($"It takes at most {SerialLength} letters. Shorten it.");
    }
}
