using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;
using ReleaseCommand = ShopJobs.Domain.Logbook.Release;

namespace ShopJobs.Web.Components.Releases;

/// <summary>The three releases of a car.</summary>
public sealed partial class ReleasePage
{
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private IReadOnlyDictionary<long, Recorded> ended = new Dictionary<long, Recorded>();
    private IReadOnlyList<PeopleShelf.Named> drivers = [];
    private string? done;
    private string? noThird;

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
        if (Reading is null)
        {
            return;
        }

        names = await People.NamesAsync();
        drivers = await People.WithRightAsync(null);
        noThird = await Third.MissingAsync();
        ended = Reading.State.Releases.Values.Select(release => release.VoidBy).Distinct()
            .Select(number => Entries.Find(CarId, number)).OfType<Recorded>().ToDictionary(entry => entry.Number);
    }

    private async Task SignAsync(AskedRelease asked)
    {
        var words = asked.Kind.Words();
        var kept = asked.Acceptance is { } said ? AcceptanceTyped.Keep(said) : default((Acceptance Acceptance, NewContent Text)?);
        var request = new SignRequest($"RELEASE {words.ToUpperInvariant()}: my signature", $"{Car!.Name}: release {words}", asked.Shown, new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Release,
        };
        var why = asked.OdometerWhy.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(asked.OdometerWhy));
        var answer = await Signing.SignAsync(CarId, new ToSign<SignedCommand>(
            request,
            shown => new ReleaseCommand(asked.Kind, asked.OdometerKm, kept?.Acceptance, shown)
            {
                Odometer = asked.Odometer,
                OdometerWhy = why?.Digest,
                Driver = asked.Driver,
                DistanceKm = asked.DistanceKm,
                Closing = asked.Closing,
                Covers = asked.Covers,
            },
            kept?.Text,
            why));
        await TellAsync(answer, $"{Car.Name} is released {words}.");
    }

    private async Task UpholdAsync(ReleaseKind kind)
    {
        var request = new SignRequest(
            "VALID AGAIN: I looked at the car",
            $"{Car!.Name}: release {kind.Words()} is valid again",
            [
                new StandingWords(Reading!, Clock, names, ended).Of(kind),
                "It was suspended. There is nothing against it any more; whoever signs has looked at the car.",
            ],
            new CommandId(Guid.NewGuid()))
        { Needs = Right.Lead };
        var asked = new ToSign<SignedCommand>(request, shown => Reading!.State.AsShown(Reading.Now, new UpholdRelease(kind, shown)));
        await TellAsync(await Signing.SignAsync(CarId, asked), $"{Car.Name}: the release {kind.Words()} is valid again.");
    }

    private async Task TakeBackAsync(TakenBack back)
    {
        var reason = NewContent.Of(Encoding.UTF8.GetBytes(back.Reason));
        var request = new SignRequest(
            "TAKE BACK: signed by me",
            $"{Car!.Name}: take back the release {back.Kind.Words()}",
            [
                new StandingWords(Reading!, Clock, names, ended).Of(back.Kind),
                back.Driven ? "The car was driven under it." : "The car was not driven under it.",
                $"Why: {back.Reason}",
            ],
            new CommandId(Guid.NewGuid()))
        { Needs = Right.Release };
        var asked = new ToSign<SignedCommand>(
            request, shown => Reading!.State.AsShown(Reading.Now, new WithdrawRelease(back.Kind, back.Driven, reason.Digest, shown)), reason);
        await TellAsync(await Signing.SignAsync(CarId, asked), $"{Car.Name}: the release {back.Kind.Words()} is taken back.");
    }

    private async Task BackAsync(RoadTestReturn back)
    {
        var noticed = back.Noticed.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(back.Noticed));
        var why = back.OdometerWhy.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(back.OdometerWhy));
        var answer = await RunAsync(
            new EndRoadTest(back.Odometer, noticed?.Digest) { OdometerWhy = why?.Digest }, [.. new[] { noticed, why }.OfType<NewContent>()]);
        await TellAsync(answer, $"{Car!.Name} is back from its road test.{(noticed is null ? "" : " What was noticed is in its logbook; press HOLD on what it is about.")}");
    }

    private async Task TellAsync(DeskAnswer? answer, string words)
    {
        if (answer is not null)
        {
            (Answer, done) = (answer, words);
            await ReadAsync();
        }
    }
}
