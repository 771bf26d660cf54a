using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
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

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
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

    private async Task DecideAsync((HoldDecision Decision, Covering Covers) asked)
    {
        var (decision, covers) = asked;
        var book = Reading!.State.Of(Position);
        await TakeAsync(await Signing.SignAsync(CarId, DecisionDialogs.ToSign(
            $"{Car!.Name}: {Reading.Now.Name(Position)}",
            decision,
            book.Workers.Union(book.Holds.SelectMany(hold => hold.Workers.Add(hold.By))),
            (reason, acceptance, shown) => new DecideHold(Position, decision.Disposition, reason, acceptance, shown) { Covers = covers })));
    }
}
