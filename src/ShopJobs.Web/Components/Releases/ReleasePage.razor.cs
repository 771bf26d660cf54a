using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ReleaseCommand = ShopJobs.Domain.Logbook.Release;

namespace ShopJobs.Web.Components.Releases;

/// <summary>The three releases of a car.</summary>
public sealed partial class ReleasePage
{
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private IReadOnlyDictionary<long, Recorded> ended = new Dictionary<long, Recorded>();
    private string? done;

    protected override async Task ReloadAsync()
    {
        await base.ReloadAsync();
        if (Reading is null)
        {
            return;
        }

        names = await People.NamesAsync();
        ended = Reading.State.Releases.Values.Select(release => release.VoidBy).Distinct()
            .Select(number => Entries.Find(CarId, number)).OfType<Recorded>().ToDictionary(entry => entry.Number);
    }

    private async Task SignAsync(AskedRelease asked)
    {
        var words = asked.Kind.Words();
        var acceptance = asked.Acceptance.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(asked.Acceptance));
        var request = new SignRequest($"RELEASE {words.ToUpperInvariant()}: released by me", $"{Car!.Name}: release {words}", asked.Shown, new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Release,
        };
        var why = asked.OdometerWhy.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(asked.OdometerWhy));
        var answer = await Signing.SignAsync(CarId, new ToSign<SignedCommand>(
            request,
            shown => new ReleaseCommand(asked.Kind, asked.OdometerKm, acceptance?.Digest, shown) { OdometerWhy = why?.Digest, Covers = asked.Covers },
            acceptance,
            why));
        if (answer is not null)
        {
            Answer = answer;
            done = $"{Car.Name} is released {words}.";
            await ReloadAsync();
        }
    }
}
