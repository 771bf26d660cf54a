using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook.Verify;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Demo;

public sealed class DemoWorkTests(OpenDemo demo) : IClassFixture<OpenDemo>
{
    private readonly OpenShop shop = demo.Shop;

    [Fact]
    public void Every_logbook_verifies()
    {
        var report = new LogbookVerifier(shop.Services.GetRequiredService<DataFolder>().Database, EntryCodec.KeysOf).Verify();

        Assert.Empty(report.Problems);
        Assert.Equal(3 + 6 + 3, report.Heads.Count);
    }

    [Fact]
    public async Task The_bar_of_the_start_page_counts_to_the_last_entry_and_says_nothing_of_an_open_shop()
    {
        Assert.Equal(DemoWork.Entries, await shop.RowsAsync(async rows => (await rows.Database.SqlQuery<int>($"SELECT count(*) AS Value FROM entries").ToListAsync())[0]));
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await shop.NewBrowser().GetAsync("/start/progress")).Status);
    }

    [Fact]
    public async Task The_catalogue_has_a_dozen_parts_by_the_lead_one_of_them_out_of_use_and_each_is_as_its_form_would_save_it()
    {
        var parts = await shop.RowsAsync(rows => rows.Parts.ToListAsync());
        var lead = await shop.RowsAsync(rows => rows.People.Where(person => person.Name == DemoPeople.Lead.Name).Select(person => person.Id).SingleAsync());
        var kinds = shop.Services.GetRequiredService<PartCatalogueShelf>().KindKeys();

        Assert.Equal(12, parts.Count);
        Assert.Equal("OB-20", Assert.Single(parts, part => part.RetiredAt is not null).Number);
        Assert.All(parts, part => Assert.Equal(lead, part.ChangedBy));
        Assert.All(parts, part => Assert.True(new PartFormValidator(kinds).Validate(PartForm.Of(part)).IsValid));
        Assert.All(parts, part => Assert.Equal(PartValues.Of(part), PartValues.Of(PartForm.Of(part))));
        Assert.Contains(parts, part => part.Fills == "wheel.stud");
    }

    [Fact]
    public async Task Blue_has_both_jobs_just_started_and_assigned()
    {
        var blue = await ReadAsync("Blue");

        Assert.Equal(["P3", "P5"], blue.State.RunningJobs.Select(job => job.Fact.Procedure));
        Assert.All(blue.State.RunningJobs, job => Assert.False(job.Begun));
        var on = await shop.RowsAsync(rows => (
            from assignment in rows.Assignments
            join person in rows.People on assignment.PersonId equals person.Id
            join job in rows.Jobs on assignment.JobId equals job.Id
            join car in rows.Cars on job.CarId equals car.Id
            where car.Name == "Blue"
            orderby person.Name
            select person.Name).ToListAsync());
        Assert.Equal([DemoPeople.Chassis.Name, DemoPeople.Engines.Name], on);
    }

    [Fact]
    public async Task Blue_has_three_stud_kits_compared_and_one_chosen_with_its_reason()
    {
        var blue = await ReadAsync("Blue");
        var job = blue.State.RunningJobs.First(known => known.Fact.Procedure == "P3").Id;

        var parts = (await shop.Services.GetRequiredService<PartShelf>().ReadAsync(blue, job, "stud"))!;

        var kits = parts.Comparison.Options.ToDictionary(one => one.Option.Name);
        Assert.Equal(["Q2", "Q4", "Q4 long"], kits.Keys.Order(StringComparer.Ordinal));
        Assert.StartsWith("Length, front: The stud bottoms in the closed nut by 3 mm", Assert.Single(kits["Q4 long"].Verdict.DoesNotFit), StringComparison.Ordinal);
        Assert.Null(kits["Q2"].Option.Strength);
        Assert.Equal(["front", "rear"], parts.Stacks.Select(stack => stack.Name));
        Assert.Equal("Quillon Q4", Assert.Single(parts.Choices).Option);
        Assert.StartsWith("Fits front and rear", parts.Chosen!.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Orange_stands_in_the_middle_with_one_nut_held_over_torque()
    {
        var orange = await ReadAsync("Orange");

        Assert.All(Nuts("front-left"), nut => Assert.Equal(PositionState.Staged, orange.StateOf(nut)));
        Assert.Equal(
            [PositionState.Staged, PositionState.HandTight, PositionState.Staged, PositionState.HandTight, PositionState.Held],
            Nuts("front-right").Select(orange.StateOf));
        Assert.Equal(HoldReason.OverRange, Assert.Single(orange.State.Of(Nuts("front-right")[4]).Holds).Reason);
        Assert.All(Nuts("rear-left"), nut => Assert.Equal(PositionState.AsFound, orange.StateOf(nut)));
    }

    [Fact]
    public async Task White_is_on_the_road_and_owes_its_re_torque()
    {
        var white = await ReadAsync("White");

        Assert.Equal(0, white.State.Releases[ReleaseKind.Road].VoidBy);
        Assert.All(DemoWheels.Places.SelectMany(Nuts), nut => Assert.Equal(PositionState.Due, white.StateOf(nut)));
        Assert.Contains(white.HoldsOn(ReleaseKind.Track), hold => hold.Reason == HoldReason.ReTorqueDue);
        Assert.Empty(white.State.RunningJobs);
    }

    [Fact]
    public async Task White_has_its_first_work_summary_and_it_still_says_what_is_so()
    {
        var summary = Assert.Single((await ReadAsync("White")).State.Summaries);

        Assert.Equal((1, 0), (summary.Fact.Version, summary.SupersededBy));
    }

    [Fact]
    public async Task Grey_is_as_found() => Assert.Equal(0, (await ReadAsync("Grey")).State.Number);

    [Fact]
    public void Tools_show_in_date_due_soon_and_overdue()
    {
        using var scope = shop.Services.CreateScope();

        var uses = scope.ServiceProvider.GetRequiredService<ToolShelf>().All().ToDictionary(line => line.Tool.Name, line => line.Standing.Use);

        Assert.Equal((ToolUse.Overdue, ToolUse.DueSoon, ToolUse.InDate), (uses["W9"], uses["W5"], uses["W7"]));
        Assert.Equal(["W3", "W5", "W7", "W8", "W9", "WA"], uses.Keys.Order());
    }

    [Fact]
    public async Task Every_signature_is_by_its_own_person()
    {
        var white = await ReadAsync("White");
        var names = await shop.RowsAsync(rows => rows.People.ToDictionaryAsync(person => person.Id, person => person.Name));
        var pulls = Nuts("rear-right").Select(nut => white.State.Of(nut).Last!).ToList();
        var witness = shop.Services.GetRequiredService<CarEntries>().Find(white.Car, pulls[0].WitnessedBy!.Value)!;

        Assert.All(pulls, pull => Assert.Equal(DemoPeople.Chassis.Name, names[pull.Person]));
        Assert.Equal(DemoPeople.Engines.Name, names[witness.Person]);
        Assert.NotNull(witness.Entry.SignedAs);
        Assert.Equal(DemoPeople.Lead.Name, names[white.State.Releases[ReleaseKind.Road].Person]);
    }

    [Fact]
    public async Task Choosing_it_again_doubles_nothing()
    {
        var before = await CountsAsync();

        var again = await shop.NewBrowser().GetAsync("/start");

        Assert.Equal("/", again.Path);
        Assert.Equal(before, await CountsAsync());
        Assert.Equal((6 + 3, 4, 4), before);
    }

    [Fact]
    public async Task The_tablet_that_did_it_is_revoked()
    {
        var tablet = await shop.RowsAsync(rows => rows.Tablets.SingleAsync(row => row.Name.StartsWith("Demo script")));

        Assert.NotNull(tablet.RevokedAt);
        Assert.False(await shop.RowsAsync(rows => rows.Sessions.AnyAsync(session => session.EndedAt == null)));
    }

    private static IReadOnlyList<JointPosition> Nuts(string place) =>
        [.. Enumerable.Range(1, 5).Select(number => new JointPosition("wheel.nut", place, number))];

    private async Task<CarReading> ReadAsync(string name)
    {
        var id = await shop.RowsAsync(rows => rows.Cars.Where(car => car.Name == name).Select(car => car.Id).SingleAsync());
        return shop.Services.GetRequiredService<CarDesk>().Read(id, null);
    }

    private Task<(int Tools, int Jobs, int Assignments)> CountsAsync() => shop.RowsAsync(async rows =>
        (await rows.Tools.CountAsync(), await rows.Jobs.CountAsync(), await rows.Assignments.CountAsync()));
}
