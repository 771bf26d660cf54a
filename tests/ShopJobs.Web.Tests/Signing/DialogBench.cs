using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using MudBlazor;
using MudBlazor.Services;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Tests.Shared;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Running;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Signing;

/// <summary>
/// The program's own pages over a shop with people, tools and procedures. A page is used up to the open signing dialog; then something
/// changes elsewhere, and then the PIN is typed.
/// </summary>
public abstract class DialogBench : BunitContext, IAsyncLifetime
{
    protected const string Place = "front-left";
    protected static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("signing-");
    private readonly ShopOnDisk.FakeCircuit circuit = new();
    private IRenderedComponent<MudDialogProvider> dialogs = default!;

    protected DialogBench()
    {
        var configuration = new ConfigurationBuilder().Build();
        var data = new DataFolder(folder.FullName, folder.FullName);
        Services.AddSingleton<IConfiguration>(configuration);
        Services.AddLogging();
        Services.AddShopData(data).AddDesks(data);
        Services.AddSingleton<TimeProvider>(Time);
        Services.AddSingleton<Listening>().AddSingleton<ShopSettings>().AddSingleton<ShopClock>();
        Services.AddAccounts(configuration).AddFeatures();
        Services.Configure<PasswordHasherOptions>(options => options.IterationCount = 1_000);
        Services.AddSingleton<AuthenticationStateProvider>(circuit);
        Services.AddMudServices();
        SetRendererInfo(new RendererInfo("Server", true));
        JSInterop.Mode = JSRuntimeMode.Loose;
        JSInterop.Setup<string>("shopStep.drafts").SetResult("{}");
    }

    protected FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 2, 8, 0, 0, TimeSpan.Zero));

    protected WorkSeed Seed { get; private set; } = default!;

    protected CarId Car { get; private set; }

    protected JobId Job { get; private set; }

    protected CarState State => Services.GetRequiredService<CarDesk>().Read(Car, null).State;

    protected static IReadOnlyList<JointPosition> Nuts { get; } = [.. Enumerable.Range(1, 5).Select(new Joint("wheel.nut", Place).At)];

    async Task IAsyncLifetime.InitializeAsync()
    {
        await Services.MigrateShopAsync();
        Seed = new WorkSeed(Services);
        await Seed.FurnishAsync();
        (Car, Job) = await Seed.StartAsync(DemoCars.Blue.Name, "P5", DemoPeople.Chassis.Name, Place);
        Render<MudPopoverProvider>();
        dialogs = Render<MudDialogProvider>();
    }

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeComponentsAsync();
        await base.DisposeAsync();
        SqliteConnection.ClearAllPools();
        folder.Delete(recursive: true);
    }

    /// <summary>This person is signed in at the tablet.</summary>
    protected async Task SitDownAsync(DemoPeople.DemoPerson person)
    {
        var session = await Services.GetRequiredService<SessionDesk>().OpenAsync(await IdAsync(person), Seed.Tablet);
        circuit.User = PersonClaims.Of(session, person.Name);
    }

    protected async Task<PersonId> IdAsync(DemoPeople.DemoPerson person)
    {
        await using var shop = await Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        return (await shop.People.SingleAsync(row => row.Name == person.Name)).Id;
    }

    /// <summary>The person may no longer record.</summary>
    protected async Task EndRightAsync(DemoPeople.DemoPerson person)
    {
        var id = await IdAsync(person);
        await using var shop = await Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        await shop.Rights.Where(right => right.PersonId == id && right.Right == Right.Record).ExecuteDeleteAsync();
    }

    /// <summary>Somebody who held the right to record only learns.</summary>
    protected async Task MakeTraineeAsync(DemoPeople.DemoPerson person)
    {
        var id = await IdAsync(person);
        await using var shop = await Services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
        await shop.Rights.Where(right => right.PersonId == id).ExecuteUpdateAsync(set => set.SetProperty(right => right.Right, Right.Trainee));
    }

    /// <summary>Something happens on the car at another tablet; a minute passes.</summary>
    protected async Task<DeskAnswer> ElsewhereAsync(DemoPeople.DemoPerson person, Command command)
    {
        Time.Advance(TimeSpan.FromMinutes(1));
        var answer = await Seed.GiveAsync(Car, person.Name, command);
        Assert.True(answer.Recorded, answer.NotSaved ?? string.Join("; ", answer.Reasons.Select(reason => reason.Words)));
        return answer;
    }

    /// <summary>As somebody did before: opened, cleaned, on by hand, and snug.</summary>
    protected async Task HandTightAsync()
    {
        await ElsewhereAsync(DemoPeople.Chassis, new OpenPositions(Nuts, Job, null));
        await ElsewhereAsync(DemoPeople.Chassis, Sign("faces", ["faces-bare", "cones-bare", "threads-dry", "hub-ring"]));
        await ElsewhereAsync(DemoPeople.Chassis, new HandTighten(Job, "wheel-nuts", Nuts, []));
        await ElsewhereAsync(DemoPeople.Chassis, Sign("by-hand", [], new MeasuredValue("turns", 9, "turns")));
        await ElsewhereAsync(DemoPeople.Chassis, Sign("snug", ["seated"]));
        await ElsewhereAsync(DemoPeople.Chassis, Stand("wheel-up"));
    }

    /// <summary>The star at 50 N·m too, signed.</summary>
    protected async Task StagedAsync()
    {
        await HandTightAsync();
        await StarAsync(1, 50);
        await ElsewhereAsync(DemoPeople.Chassis, Sign("stage-50", []));
        await ElsewhereAsync(DemoPeople.Chassis, new ConfirmStep(Job, "lower", ["clear", "carries"], [], false, null, ""));
        await ElsewhereAsync(DemoPeople.Chassis, Stand("tyre-on-ground"));
    }

    /// <summary>The wheel to its end, witnessed and signed.</summary>
    protected async Task DoneAsync()
    {
        await StagedAsync();
        await StarAsync(2, 110);
        await ElsewhereAsync(DemoPeople.Engines, Looks());
        await ElsewhereAsync(DemoPeople.Chassis, Sign("final", ["marked"]));
    }

    protected async Task StarAsync(int stage, decimal newtonMetres, DemoPeople.DemoPerson? by = null)
    {
        foreach (var (number, visit) in new[] { 1, 3, 5, 2, 4 }.Select((number, visit) => (number, visit)))
        {
            await ElsewhereAsync(by ?? DemoPeople.Chassis, Pull(number, stage, visit, newtonMetres));
        }
    }

    protected RecordTorque Pull(int number, int stage, int visit, decimal newtonMetres) => new(
        Job, "wheel-nuts", Nuts[number - 1], State.Of(Nuts[number - 1]).Cycle, stage, visit, TorqueKind.Reading,
        new EnteredTorque(newtonMetres, TorqueUnit.NewtonMetre), WorkSeed.WA, []);

    protected Witness Looks() => new(Job, "wheel-nuts", Place, 2, WitnessMethod.LookedAtMark, true, null, "");

    protected ConfirmStep Sign(string step, string[] ticks, params MeasuredValue[] values) => new(Job, $"{step}@{Place}", ticks, values, false, null, "");

    protected static DeclareCondition Stand(string how) =>
        new([new CarCondition("stand", how), new CarCondition("hub", "held")]) { Places = [Place] };

    /// <summary>A page is drawn; waits until its button is there.</summary>
    protected IRenderedComponent<TPage> Draw<TPage>(Action<ComponentParameterCollectionBuilder<TPage>> parameters, string until)
        where TPage : IComponent
    {
        var page = Render(parameters);
        page.WaitForElement(until, Patience);
        return page;
    }

    /// <summary>Presses the button that asks for a signature; the dialog is open when this ends.</summary>
    protected async Task PressAsync<TPage>(IRenderedComponent<TPage> page, string words)
        where TPage : IComponent
    {
        var button = page.FindAll("button").Single(one => one.TextContent.Trim().StartsWith(words, StringComparison.Ordinal));
        _ = button.GetAttribute("type") == "submit" ? button.Closest("form")!.SubmitAsync() : button.ClickAsync(new());
        await Task.Yield();
        dialogs.WaitForAssertion(() => Assert.NotEmpty(dialogs.FindAll(".person-tile")), Patience);
    }

    /// <summary>Uses a dialog that asks before the signature.</summary>
    protected IRenderedComponent<MudDialogProvider> Dialog(string until)
    {
        dialogs.WaitForElement(until, Patience);
        return dialogs;
    }

    /// <summary>The lines that the open dialog shows.</summary>
    protected IReadOnlyList<string> Shown => [.. dialogs.FindAll(".sign-shown li").Select(line => line.TextContent.Trim())];

    /// <summary>The signer picks the name, types the PIN and signs.</summary>
    protected async Task TypePinAsync(DemoPeople.DemoPerson signer)
    {
        await dialogs.FindAll(".person-tile").Single(tile => tile.TextContent.Trim() == signer.Name).QuerySelector("input")!.ChangeAsync(new() { Value = "on" });
        await dialogs.Find("#sign-pin").InputAsync(new() { Value = signer.Pin });
        await dialogs.Find("form").SubmitAsync();
    }

    /// <summary>What the page says after it.</summary>
    protected static void Says<TPage>(IRenderedComponent<TPage> page, string words)
        where TPage : IComponent =>
        page.WaitForAssertion(() => Assert.Contains(words, page.Markup, StringComparison.Ordinal), Patience);
}
