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
    private IReadOnlyList<GatheredHold> reasons = [];
    private Released? released;
    private string odometer = "";
    private string acceptance = "";
    private string lower = "";
    private string driver = "";
    private string distance = "";
    private Covering covers = Covering.Nothing;
    private ReleaseStandingKind standing;

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
    public IReadOnlyList<PeopleBook.Named> Drivers { get; set; } = [];

    /// <summary>The car is back from its road test.</summary>
    [Parameter]
    public EventCallback<RoadTestReturn> OnBack { get; set; }

    [Parameter]
    public EventCallback<AskedRelease> OnRelease { get; set; }

    /// <summary>The lead looked: the suspended release stands again.</summary>
    [Parameter]
    public EventCallback<ReleaseKind> OnUphold { get; set; }

    [Parameter]
    public EventCallback<TakenBack> OnTakeBack { get; set; }

    private string TitleId => $"release-{Kind.ToString().ToLowerInvariant()}";

    // Suspended is no yes, also where nothing speaks against it any more: the lead looks first.
    private bool IsYes => reasons.Count == 0 && standing != ReleaseStandingKind.Suspended;

    private bool Accepted => Typed.Clean(acceptance).Length > 0;

    private string WhyLower => Typed.Clean(lower);

    private bool IsLower => Odometer.Read(odometer) < Reading.State.Odometer;

    private PersonId? Driver => Kind == ReleaseKind.RoadTest && Guid.TryParse(driver, out var id) ? new PersonId(id) : null;

    private decimal? DistanceKm => Kind == ReleaseKind.RoadTest ? Odometer.Read(distance) : null;

    private bool NeedsAcceptance => Kind != ReleaseKind.Move && (Accepted || reasons.Any(IsReTorque));

    private bool OnlyReTorque => reasons.Count > 0 && reasons.All(IsReTorque);

    private string Stands => new StandingWords(Reading, Clock, Names, Ended).Of(Kind);

    private List<string> Terms
    {
        get
        {
            if (released is null)
            {
                return [IsLower && WhyLower.Length == 0
                    ? Text($"It was at {Reading.State.Odometer:0.#} km before: write why it is lower now.")
                    : Odometer.Read(odometer) is null ? "Type the odometer first: the re-torque is due by distance."
                    : "Name who drives, and how far at most."];
            }

            var terms = new List<string>
            {
                released.NotChecked == 0
                    ? "Every joint of the register was made here."
                    : Text($"{released.NotChecked} joints are as found: not checked by us."),
            };
            if (released is { DistanceKm: { } far, Driver: { } who })
            {
                terms.Add(Text($"{Names.GetValueOrDefault(who, "Somebody")} drives, at most {far:0.#} km. It ends when the car is back, and with the day."));
            }

            if (released.Without is { Count: > 0 } without)
            {
                terms.Add($"Without {string.Join(", ", without.Select(Reading.Now.Register.NameOfResult))}: only a drive gives it. The track waits for it.");
            }

            if (released.LapsesAtKm is { } km)
            {
                terms.Add(Text($"Lapses at {km:0.#} km") + (released.LapsesOn is { } day ? Text($" or after {day:d MMM yyyy}, whichever comes first") : "") + ": a re-torque is due by then.");
            }

            if (released.Closes.Count > 0)
            {
                terms.Add($"Ends {string.Join(", ", released.Closes.Select(job => Reading.State.Jobs[job].Fact.Procedure))}: all steps are signed.");
            }

            return terms;
        }
    }

    protected override void OnParametersSet() => Ask();

    // What the customer's written word lifts.
    private bool IsReTorque(GatheredHold reason) => reason.Reason is HoldReason.ReTorqueDue or HoldReason.ReTorqueOverdue
        || (Kind == ReleaseKind.Road && reason.Reason == HoldReason.AwaitsDrive);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private void Ask()
    {
        standing = Reading.StandingOf(Kind).Kind;
        reasons = Reading.Now.Gather(Reading.HoldsOn(Kind, Accepted, Odometer.Read(odometer)));
        // What the release would say is what the domain would record, whoever signs.
        var command = Reading.State.AsShown(Reading.Now, new ReleaseCommand(Kind, Odometer.Read(odometer), Accepted ? Given : null, "")
        {
            OdometerWhy = WhyLower.Length > 0 ? Given : null,
            Driver = Driver,
            DistanceKm = DistanceKm,
        });
        covers = command.Covers;
        var signer = Reading.Now with { Rights = new HashSet<Right> { Right.Release } };
        released = Reading.State.Decide(command, signer) is Verdict.Accepted { Entries: [Released entry] } ? entry : null;
    }

    private Task ReleaseAsync()
    {
        if (released is null)
        {
            return Task.CompletedTask;
        }

        List<string> shown = [$"Release {Kind.Words()}: YES, nothing speaks against it", .. Terms];
        if (released.OdometerKm is { } km)
        {
            shown.Insert(1, Text($"Odometer {km} km"));
        }

        if (Accepted)
        {
            shown.Add($"The customer's written acceptance: {Typed.Clean(acceptance)}");
        }

        if (IsLower)
        {
            shown.Add($"The odometer is lower than before: {WhyLower}");
        }

        return OnRelease.InvokeAsync(new AskedRelease(
            Kind, released.OdometerKm, Typed.Clean(acceptance), IsLower ? WhyLower : "", shown, covers)
        {
            Driver = released.Driver,
            DistanceKm = released.DistanceKm,
        });
    }
}
