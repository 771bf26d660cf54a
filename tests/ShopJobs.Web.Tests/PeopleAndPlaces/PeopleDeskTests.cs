using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Components.PeopleAndPlaces;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.PeopleAndPlaces;

public sealed class PeopleDeskTests : IAsyncLifetime
{
    private ShopOnDisk shop = default!;

    private PeopleDesk Desk => shop.Get<PeopleDesk>();

    public async Task InitializeAsync() => shop = await ShopOnDisk.OpenAsync();

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task New_person_signs_in_with_the_pin_shown()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var form = new PersonForm { Name = " Tove " };

        var given = Assert.IsType<PinGiven.Given>(await Desk.AddAsync(form));

        Assert.Equal("Tove", given.Name);
        Assert.IsType<PinAnswer.Right>(await shop.Get<PinCheck>().AtTheDoorAsync(form.Id, given.Pin, shop.Tablet));
        Assert.Equal([Right.Record], await RightsAsync(form.Id, ShopOnDisk.Today));
    }

    [Theory]
    [InlineData("", "Write the person's name")]
    [InlineData("jorn", "There is a person called Jorn already")]
    public async Task Person_without_an_own_name_is_not_added(string name, string said)
    {
        await shop.SignInAsync(DemoPeople.Lead);

        Assert.Contains(said, Assert.IsType<PinGiven.Refused>(await Desk.AddAsync(new PersonForm { Name = name })).Words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("J\u043Ern", "“J\u043Ern” looks like “Jorn”, the name of a person.")] // Cyrillic o
    [InlineData("Jorn\u200B", "It has a character that nobody sees after “Jorn”.")]
    [InlineData("\u202EnroJ", "It has a character that nobody sees at its beginning.")]
    public async Task Name_that_passes_for_another_or_hides_something_is_not_added(string name, string said)
    {
        await shop.SignInAsync(DemoPeople.Lead);

        Assert.Contains(said, Assert.IsType<PinGiven.Refused>(await Desk.AddAsync(new PersonForm { Name = name })).Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_two_alike_added_at_once_one_is_refused()
    {
        await shop.SignInAsync(DemoPeople.Lead);

        var answers = await Task.WhenAll(new[] { "Ida", "lda", "1da", "\u0406da" }.Select(name => Task.Run(() => Desk.AddAsync(new PersonForm { Name = name }))));

        Assert.Single(answers.OfType<PinGiven.Given>());
        Assert.All(answers.OfType<PinGiven.Refused>(), refused => Assert.Contains("looks like", refused.Words, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Renamed_person_keeps_the_earlier_name_under_earlier_entries_and_nobody_else_gets_it()
    {
        var edda = await shop.SignInAsync(DemoPeople.Lead);
        var form = new ToolForm { Name = "W9", Serial = "S-9", LowestMarked = "40", Top = "200", Graduation = "1" };
        await shop.Get<ToolShelf>().SaveAsync(form);
        shop.Time.Advance(TimeSpan.FromMinutes(5));

        Assert.Null(await Desk.RenameAsync(new PersonForm { Id = edda, Name = " Edda Thorne " }));
        shop.Time.Advance(TimeSpan.FromMinutes(5));
        await shop.Get<ToolShelf>().TakeOutAsync(form.Id, new CommandId(Guid.NewGuid()), "Dropped");

        var person = (await Desk.AllAsync()).Single(row => row.Id == edda);
        Assert.Equal(("Edda Thorne", "ET"), (person.Name, person.Initials));
        var sheet = await shop.Get<LogbookShelf>().ReadAsync(Folders.LogbookOf(form.Id), null);
        Assert.Equal(["Edda Thorne", "Edda"], sheet!.Lines.Select(line => line.Who));
        Assert.Equal("Edda", Assert.Single(await Desk.NamesBeforeAsync(edda)).Name);
        Assert.Contains("There is a person called Edda already", Assert.IsType<PinGiven.Refused>(await Desk.AddAsync(new PersonForm { Name = "edda" })).Words, StringComparison.Ordinal);
        Assert.Contains("looks like", await Desk.RenameAsync(new PersonForm { Id = edda, Name = "J\u043Ern" }), StringComparison.Ordinal);

        Assert.Null(await Desk.RenameAsync(new PersonForm { Id = edda, Name = "Edda" }));
        Assert.Equal("Edda", (await Desk.AllAsync()).Single(row => row.Id == edda).Name);
    }

    [Fact]
    public async Task Right_is_not_dated_far_back()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var sefa = await shop.IdOfAsync("Sefa");

        Assert.Equal(
            "The first day lies more than 31 days back. A right begins today, later, or at most 31 days ago.",
            await Desk.GiveAsync(sefa, Right.Witness, new DateOnly(1900, 1, 1), to: null));
        Assert.NotNull(await Desk.GiveAsync(sefa, Right.Witness, ShopOnDisk.Today.AddDays(-32), to: null));
        Assert.Null(await Desk.GiveAsync(sefa, Right.Witness, ShopOnDisk.Today.AddDays(-31), to: null));
    }

    [Fact]
    public async Task Right_given_by_mistake_today_never_was()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var sefa = await shop.IdOfAsync("Sefa");
        await Desk.GiveAsync(sefa, Right.Witness, ShopOnDisk.Today, to: null);
        var given = await shop.RowsAsync(rows => rows.Rights.Where(right => right.PersonId == sefa && right.Right == Right.Witness).Select(right => right.Id).SingleAsync());

        Assert.Null(await Desk.EndAsync(given));

        Assert.DoesNotContain(Right.Witness, await RightsAsync(sefa, ShopOnDisk.Today));
    }

    [Fact]
    public async Task Huge_name_is_not_added()
    {
        await shop.SignInAsync(DemoPeople.Lead);

        Assert.IsType<PinGiven.Refused>(await Desk.AddAsync(new PersonForm { Name = new string('x', 100_000) }));
    }

    [Fact]
    public async Task Name_of_a_leaver_is_never_used_again()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        Assert.Null(await Desk.SetActiveAsync(await shop.IdOfAsync("Sefa"), active: false));

        Assert.IsType<PinGiven.Refused>(await Desk.AddAsync(new PersonForm { Name = "Sefa" }));
    }

    [Fact]
    public async Task Nobody_but_the_lead_changes_people()
    {
        var jorn = await shop.SignInAsync(DemoPeople.Chassis);

        Assert.IsType<PinGiven.Refused>(await Desk.AddAsync(new PersonForm { Name = "Tove" }));
        Assert.IsType<PinGiven.Refused>(await Desk.ResetPinAsync(jorn));
        Assert.NotNull(await Desk.GiveAsync(jorn, Right.Lead, ShopOnDisk.Today, to: null));
        Assert.NotNull(await Desk.SetActiveAsync(jorn, active: false));
        Assert.NotNull(await Desk.RenameAsync(new PersonForm { Id = jorn, Name = "Tove" }));
        Assert.NotNull(await shop.Get<TabletShelf>().RevokeAsync(shop.Tablet));
    }

    [Fact]
    public async Task Lead_who_lost_the_right_meanwhile_changes_nothing_in_an_open_circuit()
    {
        var edda = await shop.SignInAsync(DemoPeople.Lead);
        await shop.RowsAsync(rows => rows.Rights.Where(right => right.PersonId == edda && right.Right == Right.Lead).ExecuteDeleteAsync());

        Assert.IsType<PinGiven.Refused>(await Desk.AddAsync(new PersonForm { Name = "Tove" }));
    }

    [Fact]
    public async Task New_pin_signs_out_and_the_old_one_is_dead()
    {
        await shop.SignInAsync(DemoPeople.Chassis);
        var jornsCircuit = shop.Circuit.User;
        var jorn = await shop.IdOfAsync("Jorn");
        await shop.SignInAsync(DemoPeople.Lead);

        var given = Assert.IsType<PinGiven.Given>(await Desk.ResetPinAsync(jorn));

        Assert.Null(await shop.Get<SessionDesk>().CheckAsync(jornsCircuit, touch: false));
        Assert.IsType<PinAnswer.No>(await shop.Get<PinCheck>().AtTheDoorAsync(jorn, DemoPeople.Chassis.Pin, shop.Tablet));
        Assert.IsType<PinAnswer.Right>(await shop.Get<PinCheck>().AtTheDoorAsync(jorn, given.Pin, shop.Tablet));
    }

    [Fact]
    public async Task Right_holds_on_its_first_and_last_day_and_on_no_other()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var sefa = await shop.IdOfAsync("Sefa");

        Assert.Null(await Desk.GiveAsync(sefa, Right.Witness, new DateOnly(2026, 3, 10), new DateOnly(2026, 3, 12)));

        var holds = await Task.WhenAll(Enumerable.Range(9, 5).Select(async day => (await RightsAsync(sefa, new DateOnly(2026, 3, day))).Contains(Right.Witness)));
        Assert.Equal<bool>([false, true, true, true, false], holds);
    }

    [Fact]
    public async Task Same_right_twice_in_the_same_days_is_refused()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var jorn = await shop.IdOfAsync("Jorn");

        Assert.Contains("already", await Desk.GiveAsync(jorn, Right.Witness, ShopOnDisk.Today, to: null), StringComparison.Ordinal);
        Assert.Contains("before the first", await Desk.GiveAsync(jorn, Right.Decide, ShopOnDisk.Today, ShopOnDisk.Today.AddDays(-1)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trainee_holds_no_other_right()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var sefa = await shop.IdOfAsync("Sefa");

        Assert.Contains("A trainee holds no other right", await Desk.GiveAsync(sefa, Right.Trainee, ShopOnDisk.Today, to: null), StringComparison.Ordinal);
        Assert.Contains("A trainee holds no other right", Assert.IsType<PinGiven.Refused>(
            await Desk.AddAsync(new PersonForm { Name = "Tove", Rights = { Right.Trainee } })).Words, StringComparison.Ordinal);

        var record = await shop.RowsAsync(rows => rows.Rights.Where(right => right.PersonId == sefa && right.Right == Right.Record).Select(right => right.Id).SingleAsync());
        Assert.Null(await Desk.EndAsync(record));
        Assert.Null(await Desk.GiveAsync(sefa, Right.Trainee, ShopOnDisk.Today, to: null));
        Assert.Contains("the right to learn in those days", await Desk.GiveAsync(sefa, Right.Lead, ShopOnDisk.Today, to: null), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ended_right_is_gone_at_once()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var jorn = await shop.IdOfAsync("Jorn");
        var witness = await shop.RowsAsync(rows => rows.Rights.Where(right => right.PersonId == jorn && right.Right == Right.Witness).Select(right => right.Id).SingleAsync());

        Assert.Null(await Desk.EndAsync(witness));

        Assert.Equal([Right.Record], await RightsAsync(jorn, ShopOnDisk.Today));
        Assert.Contains(Right.Witness, await RightsAsync(jorn, ShopOnDisk.Today.AddDays(-1)));
    }

    [Fact]
    public async Task Shop_is_never_left_without_a_lead()
    {
        var edda = await shop.SignInAsync(DemoPeople.Lead);
        var right = await shop.RowsAsync(rows => rows.Rights.Where(row => row.PersonId == edda && row.Right == Right.Lead).Select(row => row.Id).SingleAsync());

        Assert.Contains("nobody could lead", await Desk.SetActiveAsync(edda, active: false), StringComparison.Ordinal);
        Assert.Contains("nobody could lead", await Desk.EndAsync(right), StringComparison.Ordinal);
        Assert.NotNull(await shop.Get<WhoIsHere>().LookingAsync());
    }

    [Fact]
    public async Task Person_who_left_holds_no_right()
    {
        await shop.SignInAsync(DemoPeople.Lead);
        var jorn = await shop.IdOfAsync("Jorn");
        Assert.Null(await Desk.SetActiveAsync(jorn, active: false));

        Assert.Empty(await RightsAsync(jorn, ShopOnDisk.Today));
    }

    [Fact]
    public async Task Revoked_tablet_signs_its_person_out()
    {
        await shop.SignInAsync(DemoPeople.Lead);

        Assert.Null(await shop.Get<TabletShelf>().RevokeAsync(shop.Tablet));

        Assert.Null(await shop.Get<WhoIsHere>().LookingAsync());
    }

    // A change of the shop's rows and a decision on a logbook ask the same book.
    private async Task<IReadOnlySet<Right>> RightsAsync(PersonId person, DateOnly day)
    {
        var rights = await shop.RowsAsync(rows => rows.RightsOfAsync(person, day));
        Assert.Equal(rights, shop.Get<LogbookSnapshots>().Read(reader => reader.RightsOf(person, day)));
        return rights;
    }
}
