using System.Globalization;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Desk;
using ReleaseCommand = ShopJobs.Domain.Logbook.Release;

namespace ShopJobs.Web.Components.Releases;

/// <summary>One release of one car. Reasons and terms are asked of the domain each time something changes.</summary>
public sealed partial class ReleaseCard
{
    private static readonly ContentDigest Given = ContentDigest.Of([], []);
    private AcceptanceTyped said = new();
    private IReadOnlyList<GatheredHold> reasons = [];
    private Released? released;
    private OdometerEntry odometer = new();
    private string driver = "";
    private string distance = "";
    private readonly HashSet<ClosingItem> seen = [];
    private Covering covers = Covering.Nothing;
    private ReleaseStandingKind standing;
    private bool pressed;
    private long? given;

    // What only a drive gives is missing, or a re-torque is still due: the customer's word is a written one.
    private bool inWriting;
    private bool awaitsDrive;

    [Parameter, EditorRequired]
    public CarReading Reading { get; set; } = default!;

    [Parameter, EditorRequired]
    public ReleaseKind Kind { get; set; }

    /// <summary>The entries that ended releases, by number.</summary>
    [Parameter]
    public IReadOnlyDictionary<long, Recorded> Ended { get; set; } = new Dictionary<long, Recorded>();

    [Parameter]
    public IReadOnlyDictionary<PersonId, string> Names { get; set; } = new Dictionary<PersonId, string>();

    /// <summary>Everybody who works here: one of them drives a road test.</summary>
    [Parameter]
    public IReadOnlyList<PeopleShelf.Named> Drivers { get; set; } = [];

    /// <summary>The car is back from its road test.</summary>
    [Parameter]
    public EventCallback<RoadTestReturn> OnBack { get; set; }

    [Parameter]
    public EventCallback<AskedRelease> OnRelease { get; set; }

    /// <summary>The lead looked: the suspended release is valid again.</summary>
    [Parameter]
    public EventCallback<ReleaseKind> OnUphold { get; set; }

    [Parameter]
    public EventCallback<TakenBack> OnTakeBack { get; set; }

    private string TitleId => $"release-{Kind.ToString().ToLowerInvariant()}";

    // Suspended is no yes, also where there is nothing against it any more: the lead looks first.
    private bool IsYes => reasons.Count == 0 && standing != ReleaseStandingKind.Suspended;

    private IReadOnlyList<HoldPoint> Lacking => pressed && (said.IsBegun || OnlyWordMissing) ? said.Read().Lacks(Reading.Now.Today, inWriting) : [];

    private bool IsOut => Kind == ReleaseKind.RoadTest && Reading.State.RoadTest is not null;

    private PersonId? Driver => Kind == ReleaseKind.RoadTest && Guid.TryParse(driver, out var id) ? new PersonId(id) : null;

    private decimal? DistanceKm => Kind == ReleaseKind.RoadTest && OdometerReading.TryParse(distance, Reading.Now.Distance, out var far, out _) ? far.Km : null;

    // In the order in which it is walked.
    private IReadOnlyList<ClosingItem>? Closing => Kind == ReleaseKind.Move ? null : [.. ClosingCheck.All.Where(seen.Contains)];

    private bool Accepted => said.IsBegun && said.Read().Lacks(Reading.Now.Today, inWriting).Count == 0;

    private bool NeedsAcceptance => Kind != ReleaseKind.Move && (said.IsBegun || reasons.Any(IsLiftedByWord));

    private string AcceptanceTitle => awaitsDrive
        ? "The customer was told in writing what is still missing, and accepts it"
        : "The customer accepts in writing to drive before the re-torque";

    private bool OnlyWordMissing => reasons.Count > 0 && reasons.All(IsLiftedByWord);

    private string Stands => new StandingWords(Reading, Clock, Names, Ended).Of(Kind);

    private List<string> Terms
    {
        get
        {
            if (released is null)
            {
                return [odometer.IsLower && odometer.WhyLower.Length == 0
                    ? $"It was at {odometer.Last} before: write why it is lower now."
                    : odometer.Km is null && Kind != ReleaseKind.Move ? "Type the odometer first: the re-torque is due by distance."
                    : Kind != ReleaseKind.RoadTest ? "Do the closing check, and tick what you saw."
                    : "Name who drives and how far at most, and do the closing check."];
            }

            var terms = new List<string>
            {
                released.NotChecked == 0
                    ? "Every joint of the register was made here."
                    : Text($"{released.NotChecked} joints not worked on: as the car came in."),
            };
            terms.AddRange(Kind == ReleaseKind.Move ? [] : AskedFor.NotBegun(Reading).Select(words => $"{words}."));
            if (released is { DistanceKm: { } far, Driver: { } who })
            {
                terms.Add($"{Names.GetValueOrDefault(who, "Somebody")} drives, at most {Reading.Now.Distance.Say(far)}. It ends when the car is back, and with the day.");
            }

            if (released.Without is { Count: > 0 } without)
            {
                terms.Add($"Without {string.Join(", ", without.Select(Reading.Now.Register.NameOfResult))}: only a drive gives it. The track waits for it.");
            }

            if (released.LapsesAtKm is { } km)
            {
                terms.Add($"Expires at {Reading.Now.Distance.Say(km)}" + (released.LapsesOn is { } day ? $" or after {WallTime.Day(day)}, whichever comes first" : "") + ": a re-torque is due by then.");
            }

            if (released.Closes.Count > 0)
            {
                terms.Add($"Ends {string.Join(", ", released.Closes.Select(job => Reading.State.Jobs[job].Fact.Procedure))}: all steps are signed.");
            }

            return terms;
        }
    }

    protected override void OnParametersSet()
    {
        // What was typed and seen for one release says nothing of the next.
        var newest = Reading.StandingOf(Kind).Release?.Number ?? 0;
        if (given is { } before && before != newest)
        {
            (said, odometer, driver, distance, pressed) = (new AcceptanceTyped(), new OdometerEntry(), "", "", false);
            seen.Clear();
        }

        given = newest;
        odometer.Know(Reading);
        Ask();
    }

    // What the customer's written word lifts.
    private bool IsLiftedByWord(GatheredHold reason) => reason.Reason is HoldReason.ReTorqueDue or HoldReason.ReTorqueOverdue
        || (Kind == ReleaseKind.Road && reason.Reason == HoldReason.AwaitsDrive);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private void Ask()
    {
        standing = Reading.StandingOf(Kind).Kind;
        awaitsDrive = Kind == ReleaseKind.Road && Reading.HoldsOn(Kind).Any(point => point.Reason == HoldReason.AwaitsDrive);
        inWriting = HoldRules.Standard.NeedsWriting(Reading.State, Reading.Now, Kind, odometer.Km);
        reasons = Reading.Now.Gather(Reading.HoldsOn(Kind, Accepted, odometer.Km));
        // What the release would say is what the domain would record, whoever signs.
        var command = Reading.State.AsShown(Reading.Now, new ReleaseCommand(Kind, odometer.Km, Accepted ? said.Read() : null, "")
        {
            Driver = Driver,
            DistanceKm = DistanceKm,
            Closing = Closing,
            Odometer = odometer.Read,
            OdometerWhy = odometer.WhyLower.Length > 0 ? Given : null,
        });
        covers = command.Covers;
        var signer = Reading.Now with { Rights = new HashSet<Right> { Right.Release } };
        released = Reading.State.Decide(command, signer) is Verdict.Accepted { Entries: [Released entry] } ? entry : null;
    }

    private Task ReleaseAsync()
    {
        pressed = true;
        if (released is null || reasons.Count > 0)
        {
            return Task.CompletedTask;
        }

        List<string> shown = [$"Release {Kind.Words()}: YES, nothing is recorded against it", .. Terms];
        if (released.Odometer is { } read)
        {
            shown.Insert(1, $"Odometer {read.Words}");
        }

        shown.AddRange((Closing ?? []).Select(item => $"Seen: {item.Words()}"));
        if (Accepted)
        {
            shown.Add($"The customer's acceptance: {said.Read().Text()}");
        }

        if (odometer.IsLower)
        {
            shown.Add($"The odometer is lower than before: {odometer.WhyLower}");
        }

        return OnRelease.InvokeAsync(new AskedRelease(
            Kind, released.OdometerKm, Accepted ? said.Read() : null, odometer.WhyLower, shown, covers)
        {
            Odometer = released.Odometer,
            Driver = released.Driver,
            DistanceKm = released.DistanceKm,
            Closing = released.Closing,
        });
    }
}
