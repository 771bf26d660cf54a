using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Takes a decision. Whether it may be decided so is the domain's to say; what was typed stays.</summary>
public sealed partial class DecideForm
{
    private AcceptanceTyped said = new();
    private DeskAnswer? taken;
    private bool busy;
    private Disposition? chosen;
    private string reason = "";
    private bool pressed;

    [Parameter, EditorRequired]
    public Circumstances Now { get; set; } = default!;

    /// <summary>Something waits for a decision; where nothing does, what was typed is only shown.</summary>
    [Parameter]
    public bool Open { get; set; } = true;

    /// <summary>What the domain says against a decision by somebody else with the right.</summary>
    [Parameter, EditorRequired]
    public Func<Disposition, Acceptance?, IReadOnlyList<HoldPoint>> Refusals { get; set; } = default!;

    /// <summary>Why whoever looks may not decide it.</summary>
    [Parameter]
    public IReadOnlyList<HoldPoint> AboutMe { get; set; } = [];

    /// <summary>Risk class of what is used as is; null where no acceptance is asked for.</summary>
    [Parameter]
    public RiskClass? Risk { get; set; }

    /// <summary>What each decision means here.</summary>
    [Parameter]
    public Func<Disposition, string> Means { get; set; } = OfFasteners;

    /// <summary>What became of the last decision: once it is recorded, the form is empty again.</summary>
    [Parameter]
    public DeskAnswer? Answer { get; set; }

    [Parameter]
    public EventCallback<HoldDecision> OnDecide { get; set; }

    private Acceptance? Acceptance => chosen == Disposition.UseAsIs && Risk is not null && said.IsBegun ? said.Read() : null;

    // An acceptance that nobody has begun lacks everything where it is asked.
    private IReadOnlyList<HoldPoint> Missing => !pressed || chosen is not { } choice ? []
        : Against(choice) is var against && against.Any(point => point.Reason == HoldReason.AcceptanceMissing)
            ? [.. said.Read().Lacks(DateOnly.MaxValue, inWriting: true)]
            : [.. against.Where(point => !IsFinal(point))];

    protected override void OnParametersSet()
    {
        if (Answer is { Recorded: true } && !ReferenceEquals(Answer, taken))
        {
            (taken, reason, said, chosen, pressed) = (Answer, "", new AcceptanceTyped(), null, false);
        }
    }

    private static string OfFasteners(Disposition disposition) => disposition switch
    {
        Disposition.UseAsIs => "It stays as it is. The customer is told.",
        Disposition.Rework => "Back off, inspect, tighten again with the same hardware.",
        _ => "Back off, new hardware, tighten again.",
    };

    // Only an acceptance can still be given; every other reason shuts the option.
    private static bool IsFinal(HoldPoint point) => point.Reason is not (HoldReason.AcceptanceMissing or HoldReason.AcceptanceWho or HoldReason.AcceptanceWhen
        or HoldReason.AcceptanceHow or HoldReason.AcceptanceKept or HoldReason.AcceptanceWords or HoldReason.AcceptanceNotWritten);

    private IReadOnlyList<HoldPoint> Against(Disposition disposition) => Refusals(disposition, disposition == Disposition.UseAsIs ? Acceptance : null);

    private IEnumerable<string> Said(IEnumerable<HoldPoint> points) => points.Select(point => $"{Now.Say(point)}.").Distinct();

    private void Choose(Disposition disposition) => (chosen, pressed) = (disposition, false);

    private async Task DecideAsync()
    {
        pressed = true;
        var why = Typed.Clean(reason);
        if (busy || chosen is not { } choice || why.Length == 0 || Against(choice).Count > 0)
        {
            return;
        }

        List<string> shown = [$"Decision: {JointLineWords.Of(choice)}", $"Why: {why}"];
        if (Acceptance is { } accepted)
        {
            shown.Add($"Acceptance: {accepted.Text()}");
        }

        busy = true;
        try
        {
            await OnDecide.InvokeAsync(new HoldDecision(choice, why, Acceptance, shown));
        }
        finally
        {
            busy = false;
        }
    }
}
