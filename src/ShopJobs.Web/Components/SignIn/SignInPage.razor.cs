using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.SignIn;

/// <summary>Name and PIN at an enrolled tablet. Static: works without a circuit and without script.</summary>
public sealed partial class SignInPage(
    IDbContextFactory<ShopDbContext> database,
    TabletDesk tablets,
    SignInDesk desk,
    NavigationManager navigation,
    ShopSettings settings)
{
    private const int MostTiles = 12;
    private List<Choice> people = [];
    private Tablet? tablet;
    private string? refusal;
    private bool nobody;

    [CascadingParameter]
    private HttpContext Http { get; set; } = default!;

    [SupplyParameterFromQuery(Name = "returnUrl")]
    private string? ReturnUrl { get; set; }

    [SupplyParameterFromQuery(Name = "locked")]
    private bool Locked { get; set; }

    [SupplyParameterFromForm(FormName = "sign-in")]
    private SignInForm? Form { get; set; }

    private ShopSettings Settings => settings;

    private string Back => LocalUrl.OrFloor(Form?.ReturnUrl ?? ReturnUrl);

    protected override async Task OnInitializedAsync()
    {
        await using var shop = await database.CreateDbContextAsync(Http.RequestAborted);
        people = await shop.People.AsNoTracking().Where(person => person.Active)
            .OrderBy(person => person.Name).Select(person => new Choice(person.Id, person.Name)).ToListAsync(Http.RequestAborted);
        tablet = await tablets.FindAsync(Http);
        if (tablet is null)
        {
            navigation.NavigateTo(await shop.NeedsOpeningAsync(Http.RequestAborted) ? "/start" : $"/enrol?returnUrl={Uri.EscapeDataString(Back)}");
        }
    }

    private async Task SignInAsync()
    {
        if (tablet is null)
        {
            return;
        }

        if (people.Find(person => string.Equals(person.Name, Form?.Name?.Trim(), StringComparison.OrdinalIgnoreCase)) is not { } who)
        {
            (refusal, nobody) = ("Pick your name, then type your PIN.", true);
            return;
        }

        if (!Pin.LooksLikeOne(Form?.Pin))
        {
            refusal = Pin.SixDigits;
            return;
        }

        switch (await desk.SignInAsync(Http, tablet, who.Id, Form?.Pin))
        {
            case PinAnswer.No no:
                refusal = no.Words;
                break;
            case PinAnswer.Right:
                // Whoever signs with a PIN that another has seen takes one of their own first.
                await using (var shop = await database.CreateDbContextAsync(Http.RequestAborted))
                {
                    navigation.NavigateTo(await shop.IsPinOfAnotherAsync(who.Id, Http.RequestAborted) ? "/my-pin" : Back);
                }

                break;
        }
    }

    private sealed record Choice(PersonId Id, string Name);
}
