using MudBlazor;
using ShopJobs.Domain.Fasteners;

namespace ShopJobs.Web.Components.Step;

/// <summary>A question for a reason.</summary>
/// <param name="Verb">What the button does.</param>
/// <param name="Usual">Reasons that are one touch.</param>
public sealed record ReasonAsked(string Title, string About, string Verb, IReadOnlyList<string> Usual)
{
    /// <summary>The reason of a correction that only puts a mistyped number right.</summary>
    public const string Slip = "number typed wrong";

    private static readonly DialogOptions Options = new() { MaxWidth = MaxWidth.Small, FullWidth = true, BackdropClick = false, CloseOnEscapeKey = true };

    /// <summary>Unit in which the right value may be typed instead of voiding; null where only a reason is asked.</summary>
    public TorqueUnit? Restates { get; init; }

    /// <summary>For a pull that is voided: asks whether it was made all the same. Null where that is not asked.</summary>
    public string? AsksPulled { get; init; }

    /// <summary>What it may be about, where that is asked; the first is taken until another is touched.</summary>
    public IReadOnlyList<ReasonAbout> Abouts { get; init; } = [];

    /// <summary>What was given before and could not be recorded; null at the first asking.</summary>
    public ReasonGiven? Start { get; init; }

    /// <summary>The reason, or null when the person thought better of it.</summary>
    public async Task<ReasonGiven?> AskAsync(IDialogService dialogs)
    {
        ArgumentNullException.ThrowIfNull(dialogs);
        var dialog = await dialogs.ShowAsync<ReasonDialog>(Title, new DialogParameters<ReasonDialog> { { one => one.Ask, this } }, Options);
        return (await dialog.Result)?.Data as ReasonGiven;
    }
}

/// <summary>One thing that a reason may be about.</summary>
/// <param name="AsksLot">A lot or kit is named with it.</param>
public sealed record ReasonAbout(string Words, bool AsksLot = false);

/// <summary>A reason, and the right value where one was typed.</summary>
public sealed record ReasonGiven(string Text, EnteredTorque? Value)
{
    /// <summary>Whether the fastener was pulled all the same; null where that was not asked.</summary>
    public bool? WasPulled { get; init; }

    /// <summary>Which of the things asked about it is.</summary>
    public int About { get; init; }

    /// <summary>The lot or kit, as printed on the bag or box.</summary>
    public string Lot { get; init; } = "";
}
