using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Components.Procedures;

namespace ShopJobs.Web.Components.Parts;

/// <summary>Options for one group of one job side by side, and the choice among them.</summary>
public sealed partial class OptionsPage
{
    private IReadOnlyDictionary<PersonId, string> names = new Dictionary<PersonId, string>();
    private ComparedOption? picked;
    private PartsOnJob? shown;
    private ElementReference chooseTitle;
    private string? refusal;
    private bool asked;
    private bool toFocus;

    [Parameter]
    public Guid Job { get; set; }

    [Parameter]
    public string Group { get; set; } = "";

    [Inject]
    private PartShelf Shelf { get; set; } = default!;

    [Inject]
    private PartDesk Parting { get; set; } = default!;

    [Inject]
    private StackDesk Stacking { get; set; } = default!;

    [Inject]
    private PeopleShelf People { get; set; } = default!;

    private PartsOnJob? Parts { get; set; }

    private GroupOfJob On => new(CarId, new JobId(Job), Group);

    private JobBook? Book => Reading?.State.Jobs.GetValueOrDefault(On.Job);

    private string Here => Links.Options(CarId, On.Job, Group);

    private bool MayLead => Present?.May(Right.Lead) == true;

    private bool Choosing => picked is not null && MayChange;

    private bool MayChange => MayLead && Book is { IsRunning: true };

    private string Asked
    {
        get
        {
            var group = Parts!.Group;
            var jam = group.Jam is { } pair ? $", two nuts jammed at {pair.JamTorque}" : "";
            var torque = Parts.Joint.TurnedOn ? group.StageWords()
                : group.Final.Permitted.IsOneValue ? $"{group.Final.Value}" : $"{group.Final.Permitted}, target {group.Final.Value}";
            return $"This job asks for {Parts.Joint.Count} × {group.Thread}, {(group.Class is { } strength ? $"class {strength}" : "class not stated")}"
                + $"{(group.ClassNote is { } note ? $" ({note})" : "")}, face {(group.Seat is { } seat ? SeatForm.Of(seat) : "not stated")}, "
                + $"{group.Condition.Words()}, {torque}{jam}.";
        }
    }

    protected override async Task ReadAsync()
    {
        await base.ReadAsync();
        if (Reading is null)
        {
            return;
        }

        Parts = await Shelf.ReadAsync(Reading, On.Job, Group);
        names = await People.NamesAsync();
        asked = true;
        picked = picked is null ? null : Parts?.Comparison.Options.FirstOrDefault(one => one.Option.Id == picked.Option.Id && one.Verdict.CanBeChosen);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (toFocus && picked is not null)
        {
            toFocus = false;
            await chooseTitle.FocusAsync();
        }
    }

    private void Pick(ComparedOption option)
    {
        picked = option;
        shown = Parts;
        toFocus = true;
        refusal = null;
    }

    private async Task ChooseAsync(string reason)
    {
        refusal = await Parting.ChooseAsync(On, picked!.Option.Id, shown!, reason);
        if (refusal is null)
        {
            picked = null;
        }

        await ReadAsync();
        shown = Parts;
    }

    private async Task RemoveAsync(ComparedOption option)
    {
        refusal = await Parting.RemoveAsync(On, option.Option.Id);
        await ReadAsync();
    }

    private async Task RemoveStackAsync(Guid stack)
    {
        refusal = await Stacking.RemoveAsync(CarId, stack);
        await ReadAsync();
    }
}
