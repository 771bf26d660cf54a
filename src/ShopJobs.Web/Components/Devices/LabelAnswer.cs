using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.Step;

namespace ShopJobs.Web.Components.Devices;

/// <summary>What a scanned label does at a step.</summary>
/// <param name="Tool">The tool it picks; null where it picks none.</param>
/// <param name="Words">What to say of it.</param>
public sealed record LabelAnswer(ToolId? Tool, string Words)
{
    /// <summary>True where it picks its tool.</summary>
    public bool Taken => Tool is not null;

    /// <summary>The answer to a label beside the tools offered for the next pull.</summary>
    public static LabelAnswer Of(string? text, IReadOnlyList<ToolOffer> offers)
    {
        ArgumentNullException.ThrowIfNull(offers);
        if (!ToolLabel.TryRead(text, out var code))
        {
            return new(null, "That is no tool label. Scan it again, or choose the tool by hand.");
        }

        return offers.Where(offer => ToolLabel.CodeOf(offer.Id) == code).ToList() switch
        {
            [{ Fits: true } offer] => new(offer.Id, $"{offer.Tool.Name} is in hand."),
            [var offer] => new(null, $"{offer.Tool.Name} is not taken: {offer.Why}. Take another tool."),
            [] when offers.Count == 0 => new(null, "No pull is next here, so no tool is taken."),
            [] => new(null, $"No tool in use here has the label {code}. Choose the tool by hand, and print its label again."),
            _ => new(null, $"Two tools have the label {code}. Choose the tool by hand."),
        };
    }
}
