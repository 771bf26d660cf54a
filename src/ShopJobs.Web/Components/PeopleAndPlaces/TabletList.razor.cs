using System.Globalization;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data.People;

namespace ShopJobs.Web.Components.PeopleAndPlaces;

/// <summary>The tablets of the shop, and what happened at the door.</summary>
public sealed partial class TabletList
{
    private IReadOnlyList<Tablet>? tablets;
    private IReadOnlyList<DoorNote>? notes;
    private DeviceId? asked;
    private string? refusal;

    [Parameter, EditorRequired]
    public IReadOnlyList<Person> People { get; set; } = [];

    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        tablets = await Shelf.TabletsAsync();
        notes = await Shelf.LatelyAsync();
    }

    private async Task RevokeAsync(Tablet tablet)
    {
        asked = null;
        refusal = await Shelf.RevokeAsync(tablet.Id);
        await LoadAsync();
    }

    private string When(DateTime instant) => Clock.Words(instant);

    private string NameOf(PersonId? id) => People.FirstOrDefault(person => person.Id == id)?.Name ?? "somebody unknown";

    private string Told(DoorNote note)
    {
        var tablet = tablets?.FirstOrDefault(row => row.Id == note.TabletId)?.Name ?? "a browser not enrolled";
        var about = NameOf(note.PersonId);
        var by = note.ByPersonId is null ? "" : $" by {NameOf(note.ByPersonId)}";
        return note.Event switch
        {
            DoorEvent.SignedIn => $"{about} signed in on {tablet}",
            DoorEvent.SignedOut => $"{about} signed out on {tablet}",
            DoorEvent.WrongPin => $"Wrong PIN for {about} on {tablet}",
            DoorEvent.PinBlocked => $"PIN of {about} closed after too many wrong tries, last on {tablet}",
            DoorEvent.PinReset => $"New PIN for {about}{(by.Length > 0 ? by : " from the machine itself")}",
            DoorEvent.TabletEnrolled => $"{tablet} enrolled{by}",
            DoorEvent.TabletRevoked => $"{tablet} taken out of use{by}",
            DoorEvent.PersonAdded => $"{about} added{by}",
            DoorEvent.PersonClosed => $"Account of {about} closed{by}",
            DoorEvent.PersonReopened => $"Account of {about} reopened{by}",
            DoorEvent.RightGiven => $"{about} given a right{by}",
            DoorEvent.RightEnded => $"A right of {about} ended{by}",
            DoorEvent.PinChanged => $"{about} took a PIN of their own",
            DoorEvent.CustomerErased => $"Personal data of a customer erased{by}",
            DoorEvent.PersonRenamed => $"{about} renamed{by}",
            DoorEvent.PersonConfirmed => $"{about} confirmed{by}",
            _ => throw new InvalidOperationException($"The door book holds {note.Event}, which has no words."),
        };
    }
}
