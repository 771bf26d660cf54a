using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Web.Components.Bench.Fields;

/// <summary>A thread size: "M12x1.5", "1/2-20 UNF".</summary>
public sealed class ThreadField : BenchField<ThreadSize>
{
    /// <summary>The one thread of a card.</summary>
    public ThreadField()
        : base("thread", "Thread")
    {
        Hint = "For example M12x1.5 or 1/2-20 UNF.";
        Example = "M12x1.5";
    }

    /// <inheritdoc/>
    public override string InputMode => "text";

    private protected override bool TryRead(string text, BenchUnits units, out ThreadSize value, out string? problem)
    {
        var read = ThreadSize.TryParse(text, out var size, out problem);
        value = size!;
        return read;
    }
}
