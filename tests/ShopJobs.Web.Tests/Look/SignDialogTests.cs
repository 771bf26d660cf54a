using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor;
using MudBlazor.Services;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Look;

public sealed class SignDialogTests : BunitContext, IAsyncLifetime
{
    private ShopOnDisk shop = default!;
    private IRenderedComponent<MudDialogProvider> screen = default!;
    private Task<SignatureProof?> asked = default!;

    private const string Focus = "Blazor._internal.domWrapper.focus";

    // What was focused last.
    private object? Focused => JSInterop.Invocations[Focus][^1].Arguments[0];

    private static SignRequest Request => new(
        "SIGN: done by me", "Blue, step 9", ["G1 top nuts, 3 at 24 N.m", "wrench W3"], new CommandId(Guid.Parse("5a000000-0000-4000-8000-000000000001")))
    {
        Needs = Right.Witness,
    };

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        await shop.SignInAsync(DemoPeople.Chassis);
        Services.AddMudServices();
        Services.AddSingleton<AuthenticationStateProvider>(shop.Circuit);
        Services.AddSingleton(shop.Get<WhoIsHere>()).AddSingleton(shop.Get<PeopleShelf>()).AddSingleton(shop.Get<SignatureDesk>());
        JSInterop.Mode = JSRuntimeMode.Loose;
        screen = Render<MudDialogProvider>();
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeComponentsAsync();
        await base.DisposeAsync();
        shop.Dispose();
    }

    [Fact]
    public async Task Button_says_what_the_signature_means_and_the_dialog_what_is_signed()
    {
        await AskAsync(Request);

        Assert.Equal("SIGN: done by me", Button().TextContent.Trim());
        Assert.Equal(["G1 top nuts, 3 at 24 N.m", "wrench W3"], screen.FindAll(".sign-shown li").Select(line => line.TextContent.Trim()));
    }

    [Fact]
    public async Task The_pin_has_the_focus_where_the_signer_is_known_and_again_after_a_wrong_one()
    {
        await AskAsync(Request);
        screen.WaitForAssertion(() => Focused.ShouldBeElementReferenceTo(screen.Find("#sign-pin")));
        var before = JSInterop.Invocations[Focus].Count;

        await SignAsync("111111");
        screen.WaitForAssertion(() => Assert.Equal(before + 1, JSInterop.Invocations[Focus].Count));
        Focused.ShouldBeElementReferenceTo(screen.Find("#sign-pin"));
    }

    [Fact]
    public async Task The_pin_waits_where_the_signer_has_to_be_picked_first()
    {
        await AskAsync(Request with { NotThese = new HashSet<PersonId> { await shop.IdOfAsync("Jorn") } });

        Assert.NotEmpty(screen.FindAll(".person-tile"));
        Assert.ThrowsAny<Exception>(() => Focused.ShouldBeElementReferenceTo(screen.Find("#sign-pin")));
    }

    [Fact]
    public async Task Only_people_who_may_sign_are_offered()
    {
        await AskAsync(Request with { NotThese = new HashSet<PersonId> { await shop.IdOfAsync("Mika") } });

        Assert.Equal(["Edda", "Jorn"], screen.FindAll(".person-tile").Select(tile => tile.TextContent.Trim()));
    }

    [Fact]
    public async Task Right_pin_closes_with_a_proof_of_what_was_shown()
    {
        await AskAsync(Request);
        await SignAsync(DemoPeople.Chassis.Pin);

        var proof = await asked.WaitAsync(TimeSpan.FromSeconds(30));

        Assert.Equal(await shop.IdOfAsync("Jorn"), proof!.Signer);
        Assert.True(proof.Covers(Request.Command, Request.Digest, shop.Time.GetUtcNow().UtcDateTime));
    }

    [Fact]
    public async Task Wrong_pin_stays_open_says_so_and_forgets_what_was_typed()
    {
        await AskAsync(Request);
        await SignAsync("111111");

        screen.WaitForAssertion(() => Assert.Contains("not the PIN of Jorn", screen.Find("[role=alert]").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
        Assert.Equal("", screen.FindComponent<PinPad>().Instance.Value);
        Assert.False(asked.IsCompleted);
    }

    [Fact]
    public async Task Nobody_is_picked_for_somebody_who_may_not_sign()
    {
        await AskAsync(Request with { NotThese = new HashSet<PersonId> { await shop.IdOfAsync("Jorn") } });
        Assert.Empty(screen.FindAll(".person-tile input[checked]"));
        await SignAsync(DemoPeople.Chassis.Pin);

        screen.WaitForAssertion(() => Assert.Contains("Pick who signs", screen.Find("[role=alert]").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
    }

    [Fact]
    public async Task Not_now_gives_no_proof()
    {
        await AskAsync(Request);
        await screen.Find("button:not([type=submit]):not(.pin-key)").ClickAsync();

        Assert.Null(await asked.WaitAsync(TimeSpan.FromSeconds(30)));
    }

    private async Task AskAsync(SignRequest request)
    {
        asked = await screen.InvokeAsync(() => Task.FromResult(Services.GetRequiredService<IDialogService>().SignAsync(request)));
        screen.WaitForElement(".person-tile", TimeSpan.FromSeconds(30));
    }

    private async Task SignAsync(string pin)
    {
        await screen.Find("#sign-pin").InputAsync(pin);
        await screen.Find("form").SubmitAsync();
    }

    private IElement Button() => screen.Find("button[type=submit]");
}
