using System.Text;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>The decision about one held position.</summary>
public sealed partial class HeldPage
{
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private IReadOnlyDictionary<long, string> texts = new Dictionary<long, string>();

    [Parameter]
    public string Key { get; set; } = "";

    [Parameter]
    public string Place { get; set; } = "";

    [Parameter]
    public int Number { get; set; }

    [Inject]
    private CarEntries Entries { get; set; } = default!;

    private JointPosition Position => new(Key, Place, Number);

    protected override async Task ReloadAsync()
    {
        await base.ReloadAsync();
        if (Reading is null)
        {
            return;
        }

        names = await People.NamesAsync();
        var said = Reading.State.Of(Position).Holds.Select(hold => Entries.Find(CarId, hold.Number)).OfType<Recorded>()
            .Select(entry => (entry.Number, Text: entry.Entry.Facets().Texts.Select(text => text.Digest).ToList()))
            .Where(entry => entry.Text.Count > 0).ToList();
        var found = Entries.Texts(said.SelectMany(entry => entry.Text));
        texts = said.ToDictionary(entry => entry.Number, entry => string.Join("; ", entry.Text.Select(digest => found[digest])));
    }

    private async Task DecideAsync(HoldDecision decision)
    {
        var reason = NewContent.Of(Encoding.UTF8.GetBytes(decision.Reason));
        var acceptance = decision.Acceptance.Length == 0 ? null : NewContent.Of(Encoding.UTF8.GetBytes(decision.Acceptance));
        var book = Reading!.State.Of(Position);
        var request = new SignRequest(
            $"DECIDE {JointLineWords.Of(decision.Disposition).ToUpperInvariant()}: decided by me",
            $"{Car!.Name}: {Reading.Now.Name(Position)}",
            decision.Shown,
            new CommandId(Guid.NewGuid()))
        {
            Needs = Right.Decide,
            NotThese = book.Workers.Union(book.Holds.SelectMany(hold => hold.Workers.Add(hold.By))),
        };
        var asked = new ToSign<SignedCommand>(
            request,
            shown => new DecideHold(Position, decision.Disposition, reason.Digest, acceptance?.Digest, shown) { Covers = decision.Covers },
            reason,
            acceptance);
        var answer = await Signing.SignAsync(CarId, asked);
        if (answer is not null)
        {
            Answer = answer;
            await ReloadAsync();
        }
    }
}
