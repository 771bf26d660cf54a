using Microsoft.AspNetCore.Components;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Names;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.SignIn;

/// <summary>A lead makes this browser a tablet of the shop.</summary>
public sealed partial class EnrolPage(
    IDbContextFactory<ShopDbContext> database, TabletDesk tablets, PinCheck pins, NavigationManager navigation, ShopClock clock)
{
    private string? refusal;
    private About? about;

    private enum About
    {
        Tablet,
        Lead,
        Pin,
    }

    [CascadingParameter]
    private HttpContext Http { get; set; } = default!;

    [SupplyParameterFromQuery(Name = "returnUrl")]
    private string? ReturnUrl { get; set; }

    [SupplyParameterFromForm(FormName = "enrol")]
    private EnrolForm? Form { get; set; }

    private string Back => LocalUrl.OrFloor(Form?.ReturnUrl ?? ReturnUrl);

    private string SignIn => $"/sign-in?returnUrl={Uri.EscapeDataString(Back)}";

    protected override async Task OnInitializedAsync()
    {
        await using var shop = await database.CreateDbContextAsync(Http.RequestAborted);
        if (await shop.NeedsOpeningAsync(Http.RequestAborted))
        {
            navigation.NavigateTo("/start");
        }
        else if (await tablets.FindAsync(Http) is not null)
        {
            navigation.NavigateTo(SignIn);
        }
    }

    private async Task EnrolAsync()
    {
        var tabletName = Typed.Clean(Form?.TabletName);
        var leadName = Form?.LeadName?.Trim();
        if (string.IsNullOrEmpty(tabletName) || tabletName.Length > Tablet.NameLength)
        {
            (refusal, about) = ($"Give the tablet a name of at most {Tablet.NameLength} letters.", About.Tablet);
            return;
        }

        if (NameRules.WrongLetters(tabletName) is { } wrong)
        {
            (refusal, about) = (wrong, About.Tablet);
            return;
        }

        await using var shop = await database.CreateDbContextAsync(Http.RequestAborted);
        var lead = await shop.People.AsNoTracking().SingleOrDefaultAsync(
            person => person.Name == leadName && person.Active, Http.RequestAborted);
        if (lead is null || !(await shop.RightsOfAsync(lead.Id, clock.Today, Http.RequestAborted)).Contains(Right.Lead))
        {
            (refusal, about) = ("That is nobody with the lead's right. Ask the lead to do this.", About.Lead);
            return;
        }

        if (!Pin.LooksLikeOne(Form?.Pin))
        {
            (refusal, about) = (Pin.SixDigits, About.Pin);
            return;
        }

        if (await pins.AtTheDoorAsync(lead.Id, Form?.Pin, at: null, Http.RequestAborted) is PinAnswer.No no)
        {
            (refusal, about) = (no.Words, About.Pin);
            return;
        }

        await using var locked = await shop.Database.BeginTransactionAsync(Http.RequestAborted);
        if (await shop.TabletLikeAsync(tabletName, Http.RequestAborted) is { } other)
        {
            (refusal, about) = ($"{NameRules.Taken(tabletName, other, "another tablet")} Give this one a different name, or take the other out of use first.", About.Tablet);
            return;
        }

        tablets.Enrol(shop, Http, tabletName, lead.Id);
        await shop.SaveChangesAsync(Http.RequestAborted);
        await locked.CommitAsync(Http.RequestAborted);
        navigation.NavigateTo(SignIn);
    }
}
