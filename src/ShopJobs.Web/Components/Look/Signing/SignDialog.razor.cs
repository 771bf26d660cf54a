using Microsoft.AspNetCore.Components;
using MudBlazor;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>Asks for a signature; closes with the proof, or cancelled.</summary>
public sealed partial class SignDialog(WhoIsHere here, PeopleShelf book, SignatureDesk desk)
{
    private const string FormId = "sign-form";
    private List<PeopleShelf.Named>? people;
    private PersonId? signer;
    private string pin = "";
    private string? refusal;
    private bool busy;
    private bool knownSigner;
    private bool focused;
    private ElementReference shown;

    [CascadingParameter]
    private IMudDialogInstance Dialog { get; set; } = default!;

    [Parameter, EditorRequired]
    public SignRequest Request { get; set; } = default!;

    private string NeedsWords => Request.Needs is { } right ? $"somebody with the right to {right.ToString().ToLowerInvariant()}" : "somebody else";

    protected override async Task OnInitializedAsync()
    {
        var present = await here.LookingAsync();
        people = [.. (await book.WithRightAsync(Request.Needs, Request.OrNeeds))
            .Where(person => !Request.NotThese.Contains(person.Id) && (Request.Only is null || Request.Only == person.Id))];
        signer = people.Find(person => person.Id == present?.Person)?.Id;
        knownSigner = signer is not null;
    }

    // The dialog gives the focus itself: to the PIN where the signer is known, else to what is signed.
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!focused && people is not null)
        {
            focused = true;
            if (!knownSigner)
            {
                await shown.FocusAsync();
            }
        }
    }

    private async Task SignAsync()
    {
        if (busy)
        {
            return;
        }

        if (signer is not { } who)
        {
            refusal = "Pick who signs, then type the PIN.";
            return;
        }

        if (!Pin.LooksLikeOne(pin))
        {
            refusal = Pin.SixDigits;
            return;
        }

        busy = true;
        var answer = await desk.VerifyAsync(who, pin, Request.Command, Request.Digest);
        busy = false;
        pin = "";
        switch (answer)
        {
            case SignatureAnswer.Signed signed:
                Dialog.Close(DialogResult.Ok(signed.Proof));
                break;
            case SignatureAnswer.Refused no:
                refusal = no.Words;
                break;
        }
    }
}
