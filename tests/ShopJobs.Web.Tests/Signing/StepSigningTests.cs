using Bunit;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Demo;

namespace ShopJobs.Web.Tests.Signing;

/// <summary>Between the open dialog of a step and the PIN the car or the draft changes: what was not shown is not signed.</summary>
public sealed class StepSigningTests : DialogBench
{
    [Fact]
    public async Task A_pull_after_the_sign_off_was_shown_refuses_it_and_the_ticks_stay()
    {
        await StagedAsync();
        await StarAsync(2, 110);
        await ElsewhereAsync(DemoPeople.Engines, Looks());
        var page = await AtAsync("final", ".sign-button");
        await page.Find(".tick input").ChangeAsync(new() { Value = true });
        await PressAsync(page, "SIGN: done by me");

        await ElsewhereAsync(DemoPeople.Chassis, Pull(4, 2, 4, 110));
        await TypePinAsync(DemoPeople.Chassis);

        Says(page, "wheel nut front-left 4 was pulled again at 09:");
        Assert.True(page.Find(".tick input").HasAttribute("checked"));
        Assert.DoesNotContain($"final@{Place}", State.Jobs[Job].SignOffs.Keys);
    }

    [Fact]
    public async Task A_value_typed_over_after_it_was_shown_is_not_what_is_signed()
    {
        await ElsewhereAsync(DemoPeople.Chassis, new OpenPositions(Nuts, Job, null));
        await ElsewhereAsync(DemoPeople.Chassis, Sign("faces", ["faces-bare", "cones-bare", "threads-dry", "hub-ring"]));
        await ElsewhereAsync(DemoPeople.Chassis, new HandTighten(Job, "wheel-nuts", Nuts, []));
        var page = await AtAsync("by-hand", "#m-turns");
        await page.Find("#m-turns").ChangeAsync(new() { Value = "9" });
        await PressAsync(page, "SIGN: done by me");
        Assert.Contains("Full turns the least of the five nuts took by hand: 9 turns", Shown);

        await page.Find("#m-turns").ChangeAsync(new() { Value = "99" });
        await TypePinAsync(DemoPeople.Chassis);

        page.WaitForAssertion(() => Assert.Equal(9, State.Jobs[Job].SignOffs[$"by-hand@{Place}"].Fact.Values[0].Value), TimeSpan.FromSeconds(30));
    }

    [Fact]
    public async Task A_nut_pulled_again_after_the_witness_was_shown_is_not_witnessed()
    {
        await StagedAsync();
        await StarAsync(2, 110);
        var page = await MarkedAsync();
        await PressAsync(page, "WITNESS: I checked");

        await ElsewhereAsync(DemoPeople.Chassis, new OpenPositions([Nuts[3]], Job, null));
        await TypePinAsync(DemoPeople.Engines);

        Says(page, "was opened at 09:");
        Assert.All(Nuts.SelectMany(nut => State.Of(nut).Pulls), pull => Assert.Null(pull.WitnessedBy));
    }

    [Fact]
    public async Task A_finding_that_could_not_be_signed_is_offered_again()
    {
        await StagedAsync();
        await StarAsync(2, 110);
        var page = await MarkedAsync();
        _ = page.FindAll("button").Single(button => button.TextContent.Trim() == "Not good").ClickAsync(new());
        var asking = Dialog("#reason-text");
        await asking.Find("#reason-text").InputAsync(new() { Value = "mark of nut 2 is cut" });
        await PressAsync(asking, "Go on to sign");
        await ElsewhereAsync(DemoPeople.Lead, Looks());
        await TypePinAsync(DemoPeople.Engines);
        Says(page, "was witnessed at 09:");
        await ElsewhereAsync(DemoPeople.Lead, new VoidEntry(State.Number, null, ContentDigest.Of([1], "wrong wheel"u8)));

        page.WaitForElement(".witness-panel", TimeSpan.FromSeconds(30));
        _ = page.FindAll("button").Single(button => button.TextContent.Trim() == "Not good").ClickAsync(new());

        Assert.Equal("mark of nut 2 is cut", Dialog("#reason-text").Find("#reason-text").GetAttribute("value"));
    }

    [Fact]
    public async Task A_countersignature_covers_the_pulls_that_were_shown()
    {
        await HandTightAsync();
        await EndRightAsync(DemoPeople.Newcomer);
        await StarAsync(1, 50, DemoPeople.Newcomer);
        var page = await AtAsync("stage-50", ".countersign-panel");
        await PressAsync(page, "COUNTERSIGN: I stood by");

        await ElsewhereAsync(DemoPeople.Chassis, new OpenPositions(Nuts, Job, null));
        await TypePinAsync(DemoPeople.Engines);

        Says(page, "None of these pulls waits for a countersignature");
    }

    [Fact]
    public async Task Countersigned_pulls_count()
    {
        await HandTightAsync();
        await EndRightAsync(DemoPeople.Newcomer);
        await StarAsync(1, 50, DemoPeople.Newcomer);
        var page = await AtAsync("stage-50", ".countersign-panel");
        Assert.False(State.IsDone(State.Of(Nuts[0]), 1));

        await PressAsync(page, "COUNTERSIGN: I stood by");
        await TypePinAsync(DemoPeople.Engines);

        page.WaitForAssertion(() => Assert.All(Nuts, nut => Assert.True(State.IsDone(State.Of(nut), 1))), TimeSpan.FromSeconds(30));
    }

    [Fact]
    public async Task A_trainees_step_counts_when_whoever_stood_by_has_countersigned_it()
    {
        await MakeTraineeAsync(DemoPeople.Newcomer);
        await ElsewhereAsync(DemoPeople.Chassis, new OpenPositions(Nuts, Job, null));
        var trainee = await AtAsync("faces", ".sign-panel", DemoPeople.Newcomer);
        Assert.Contains("You sign as a trainee", trainee.Find(".sign-panel").TextContent, StringComparison.Ordinal);
        foreach (var tick in Enumerable.Range(0, trainee.FindAll(".tick input").Count))
        {
            await trainee.FindAll(".tick input")[tick].ChangeAsync(new() { Value = true });
        }

        await PressAsync(trainee, "SIGN: done by me");
        await TypePinAsync(DemoPeople.Newcomer);
        trainee.WaitForAssertion(() => Assert.Equal(StepStanding.AwaitsCountersign, Standing("faces")), TimeSpan.FromSeconds(30));

        var page = await AtAsync("faces", ".countersign-panel");
        Assert.Contains("Signed by Sefa, a trainee", page.Find(".trainee-signed h2").TextContent, StringComparison.Ordinal);
        await PressAsync(page, "COUNTERSIGN: I stood by");
        Assert.Contains("Signed by Sefa, a trainee", Shown);
        await TypePinAsync(DemoPeople.Engines);

        page.WaitForAssertion(() => Assert.Equal(StepStanding.Signed, Standing("faces")), TimeSpan.FromSeconds(30));
        page.WaitForAssertion(() => Assert.Contains("Mika stood by and countersigned", page.Find(".signed").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(30));
    }

    private StepStanding Standing(string step)
    {
        var job = State.Jobs[Job];
        return job.SignOffs.TryGetValue($"{step}@{Place}", out var sign) ? sign.AwaitsCountersign ? StepStanding.AwaitsCountersign : StepStanding.Signed : StepStanding.NotSigned;
    }

    // Whoever did it ticks the mark first; then a witness is asked.
    private async Task<IRenderedComponent<StepPage>> MarkedAsync()
    {
        var page = await AtAsync("final", ".tick");
        foreach (var tick in Enumerable.Range(0, page.FindAll(".tick input").Count))
        {
            await page.FindAll(".tick input")[tick].ChangeAsync(new() { Value = true });
        }

        page.WaitForElement(".witness-panel", TimeSpan.FromSeconds(30));
        return page;
    }

    private async Task<IRenderedComponent<StepPage>> AtAsync(string step, string until, DemoPeople.DemoPerson? by = null)
    {
        await SitDownAsync(by ?? DemoPeople.Chassis);
        return Draw<StepPage>(
            parameters => parameters.Add(page => page.Car, Car.Value).Add(page => page.Job, Job.Value).Add(page => page.Step, $"{step}@{Place}"), until);
    }
}
