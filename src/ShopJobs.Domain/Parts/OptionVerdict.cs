namespace ShopJobs.Domain.Parts;

/// <summary>Whether an option can be chosen.</summary>
/// <param name="DoesNotFit">Why it does not fit, each a sentence; empty where there is nothing against it.</param>
/// <param name="Cautions">What to know before it is chosen, each a sentence. They rest on assumed friction or on what is not stated, and block nothing.</param>
public sealed record OptionVerdict(IReadOnlyList<string> DoesNotFit, IReadOnlyList<string> Cautions)
{
    /// <summary>True where nothing fails the check of fit.</summary>
    public bool CanBeChosen => DoesNotFit.Count == 0;

    internal static OptionVerdict Of(OptionFigures figures) => new([.. Misfits.Of(figures)], [.. OptionCautions.Of(figures)]);
}
