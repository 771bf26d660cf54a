using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Tests.Parts;

/// <summary>Options, stacks and choices as rows: who may, what is refused, and that nothing chosen is ever lost.</summary>
public sealed class PartDeskTests : IAsyncLifetime, IDisposable
{
    private readonly PartsBench bench = new();

    public Task InitializeAsync() => bench.OpenAsync();

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => bench.Dispose();

    private PartDesk Desk => bench.Shop.Get<PartDesk>();

    [Fact]
    public async Task What_is_stated_comes_back_as_it_was_written_and_what_is_not_has_no_row()
    {
        var form = PartsBench.Kit("Q4", length: "1.65 in", strength: null);
        form.Values[OptionProperty.Price].Source = "Counter offer of today";
        Assert.Null(await Desk.SaveAsync(bench.Studs, form));

        var option = (await bench.ReadAsync()).Comparison.Options.Single().Option;
        var row = (await bench.ReadAsync()).Options.Single();

        Assert.Null(option.Strength);
        Assert.DoesNotContain(row.Values, value => value.Property == OptionProperty.Strength);
        Assert.Equal((41.91, "Leaflet, rev. 3, side 1"), (Math.Round(option.Length!.Value.Millimeters, 6), option.Length.Source)); // 1.65 x 25.4, exact by the inch
        Assert.Equal((new Price(84.50m, "EUR"), "Counter offer of today"), (option.Price!.Value, option.Price.Source));
        Assert.Equal("1.65 in", row.Values.Single(value => value.Property == OptionProperty.Length).Text);
    }

    [Fact]
    public async Task Changed_option_keeps_its_id_and_drops_what_is_not_stated_any_more()
    {
        await bench.AddAsync("Q4");
        var form = OptionForm.Of((await bench.ReadAsync()).Options.Single());
        form.Values[OptionProperty.Price].NotStated = true;
        form.Values[OptionProperty.Length].Text = "44";

        Assert.Null(await Desk.SaveAsync(bench.Studs, form));

        var changed = (await bench.ReadAsync()).Options.Single();
        Assert.Equal(form.Id, changed.Id);
        Assert.DoesNotContain(changed.Values, value => value.Property == OptionProperty.Price);
        Assert.Equal("44", changed.Values.Single(value => value.Property == OptionProperty.Length).Text);
    }

    [Fact]
    public async Task Two_who_change_one_option_do_not_overwrite_each_other()
    {
        await bench.AddAsync("Q4");
        var first = OptionForm.Of((await bench.ReadAsync()).Options.Single());
        var second = OptionForm.Of((await bench.ReadAsync()).Options.Single());
        first.Values[OptionProperty.Length].Text = "44";
        Assert.Null(await Desk.SaveAsync(bench.Studs, first));

        Assert.StartsWith("Somebody changed this meanwhile", await Desk.SaveAsync(bench.Studs, second), StringComparison.Ordinal);
        Assert.Equal("44", (await bench.ReadAsync()).Options.Single().Values.Single(value => value.Property == OptionProperty.Length).Text);
    }

    [Fact]
    public async Task The_same_kit_is_not_entered_twice()
    {
        await bench.AddAsync("Q4");

        Assert.StartsWith("Quillon q4 is compared here already", await Desk.SaveAsync(bench.Studs, PartsBench.Kit("q4")), StringComparison.Ordinal);
        Assert.Single((await bench.ReadAsync()).Options);
    }

    [Fact]
    public async Task A_broken_form_is_refused_behind_the_page_too()
    {
        var form = PartsBench.Kit("Q4");
        form.Values[OptionProperty.Price].Text = "-5 EUR";

        Assert.Contains("has a sign", await Desk.SaveAsync(bench.Studs, form), StringComparison.Ordinal);
        Assert.Empty((await bench.ReadAsync()).Options);
    }

    [Fact]
    public async Task Only_the_lead_enters_chooses_removes_and_measures()
    {
        var option = await bench.AddAsync("Q4");
        var shown = await bench.ReadAsync();
        await bench.Shop.SignInAsync(bench.Shop.Technician);

        Assert.Equal(PartDesk.NotYours, await Desk.SaveAsync(bench.Studs, PartsBench.Kit("Q5")));
        Assert.Equal(PartDesk.NotYours, await Desk.ChooseAsync(bench.Studs, option, shown, "I like it"));
        Assert.Equal(PartDesk.NotYours, await Desk.RemoveAsync(bench.Studs, option));
        Assert.Equal(PartDesk.NotYours, await bench.Shop.Get<StackDesk>().SaveAsync(bench.Studs.Car, PartsBench.Stack()));
        var after = await bench.ReadAsync();
        Assert.Equal((1, 0, 0), (after.Options.Count, after.Choices.Count, after.Stacks.Count));
    }

    [Fact]
    public async Task A_kit_that_does_not_fit_is_not_chosen()
    {
        await bench.StackAsync();
        var tooLong = await bench.AddAsync("Q4 long", length: "48 mm");

        var refusal = await bench.ChooseAsync(tooLong, "It was there");

        Assert.StartsWith("Quillon Q4 long does not fit: Length, front: The stud bottoms in the closed nut by 3 mm", refusal, StringComparison.Ordinal);
        Assert.Null((await bench.ReadAsync()).Chosen);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  \n ")]
    public async Task A_choice_needs_its_reason(string reason)
    {
        var option = await bench.AddAsync("Q4");

        Assert.Equal("Write in one sentence why this one.", await bench.ChooseAsync(option, reason));
        Assert.Null((await bench.ReadAsync()).Chosen);
    }

    [Fact]
    public async Task A_later_choice_counts_and_the_earlier_one_stays_as_it_was()
    {
        await bench.StackAsync();
        var first = await bench.AddAsync("Q4");
        var second = await bench.AddAsync("Q5", strength: null);
        await bench.AddAsync("Q4 long", length: "48 mm");
        Assert.Null(await bench.ChooseAsync(first, "Fits and is marked."));
        bench.Shop.Time.Advance(TimeSpan.FromMinutes(5));
        Assert.Null(await bench.ChooseAsync(second, "The first is out of stock."));

        var parts = await bench.ReadAsync();

        Assert.Equal(("Quillon Q5", "The first is out of stock."), (parts.Chosen!.Option, parts.Chosen.Reason));
        Assert.Contains("Not stated by the maker: strength", parts.Chosen.Cautions, StringComparison.Ordinal);
        Assert.Equal(["Quillon Q4", "Quillon Q4 long, does not fit"], parts.Chosen.Others.Split('\n').Select(other => other.Split(':')[0]));
        var earlier = parts.Choices[1];
        Assert.Equal(("Quillon Q4", "Fits and is marked.", bench.Shop.Lead), (earlier.Option, earlier.Reason, earlier.By));
        Assert.Equal(TimeSpan.FromMinutes(5), parts.Chosen.At - earlier.At);
    }

    [Fact]
    public async Task The_chosen_kit_is_not_removed_and_another_is_with_its_history_kept()
    {
        var first = await bench.AddAsync("Q4");
        var second = await bench.AddAsync("Q5");
        Assert.Null(await bench.ChooseAsync(first, "Fits."));
        Assert.StartsWith("This option is chosen", await Desk.RemoveAsync(bench.Studs, first), StringComparison.Ordinal);
        Assert.Null(await bench.ChooseAsync(second, "Fits better."));

        Assert.Null(await Desk.RemoveAsync(bench.Studs, first));

        var parts = await bench.ReadAsync();
        Assert.Equal(["Q5"], parts.Options.Select(row => row.Name));
        Assert.Equal(["Quillon Q5", "Quillon Q4"], parts.Choices.Select(choice => choice.Option));
        Assert.False(await bench.Shop.RowsAsync(shop => shop.Set<OptionValue>().AnyAsync(value => value.OptionId == first)));
    }

    [Fact]
    public async Task What_was_changed_since_it_was_looked_at_is_looked_at_again_before_it_is_chosen()
    {
        var option = await bench.AddAsync("Q4");
        var seen = await bench.ReadAsync();
        var form = OptionForm.Of(seen.Options.Single());
        form.Values[OptionProperty.Length].Text = "44";
        Assert.Null(await Desk.SaveAsync(bench.Studs, form));

        Assert.Equal(PartDesk.OptionChanged, await Desk.ChooseAsync(bench.Studs, option, seen, "Fits."));
    }

    [Theory]
    [InlineData("changed")]
    [InlineData("added")]
    [InlineData("removed")]
    public async Task A_choice_never_rests_on_a_wheel_stack_nobody_saw(string meanwhile)
    {
        await bench.StackAsync();
        var option = await bench.AddAsync("Q4");
        var seen = await bench.ReadAsync();
        await bench.MeanwhileAsync(meanwhile);

        Assert.Equal("The wheel stacks changed meanwhile: read the page again, then choose.", await Desk.ChooseAsync(bench.Studs, option, seen, "Fits."));
        Assert.Empty((await bench.ReadAsync()).Choices);
        Assert.Null(await bench.ChooseAsync(option, "Fits, read again."));
    }

    [Fact]
    public async Task A_choice_is_kept_with_the_options_that_were_seen_beside_it_and_no_others()
    {
        var option = await bench.AddAsync("Q4");
        var seen = await bench.ReadAsync();
        await bench.AddAsync("Q5");

        Assert.Equal(PartDesk.OthersChanged, await Desk.ChooseAsync(bench.Studs, option, seen, "Fits."));
        Assert.Empty((await bench.ReadAsync()).Choices);
    }

    [Theory]
    [InlineData("changed")]
    [InlineData("added")]
    [InlineData("removed")]
    public async Task The_mark_of_a_choice_tells_whether_the_wheel_stacks_are_still_those(string since)
    {
        await bench.StackAsync();
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits."));
        await bench.AddAsync("Q5");
        var before = await bench.ReadAsync();
        Assert.Equal(before.MarkOf(option), before.Chosen!.Mark);

        await bench.MeanwhileAsync(since);

        var after = await bench.ReadAsync();
        Assert.NotEqual(after.MarkOf(option), after.Chosen!.Mark);
    }

    [Fact]
    public async Task The_class_of_a_kits_own_nut_is_kept_with_its_source_or_is_not_stated()
    {
        var form = PartsBench.Kit("Q4");
        form.OwnNut = true;
        foreach (var (property, text) in new[] { (OptionProperty.NutSeat, "cone 60"), (OptionProperty.NutThread, "20"), (OptionProperty.NutEnd, "24"), (OptionProperty.NutClass, "10") })
        {
            form.Values[property].Text = text;
        }

        Assert.Null(await Desk.SaveAsync(bench.Studs, form));
        var stated = (await bench.ReadAsync()).Comparison.Options.Single();
        Assert.Equal(("10", "Leaflet, rev. 3, side 1"), (stated.Option.Nut!.Class!.Value.Name, stated.Option.Nut.Class.Source));
        Assert.Contains(stated.Verdict.Cautions, caution => caution.StartsWith("Nut of the kit: A nut of class 10", StringComparison.Ordinal));

        var again = OptionForm.Of((await bench.ReadAsync()).Options.Single());
        again.Values[OptionProperty.NutClass].NotStated = true;
        Assert.Null(await Desk.SaveAsync(bench.Studs, again));
        Assert.Null((await bench.ReadAsync()).Comparison.Options.Single().Option.Nut!.Class);
    }

    [Fact]
    public async Task A_wheel_stack_is_removed_by_the_lead_and_only_once()
    {
        await bench.StackAsync();
        var stack = (await bench.ReadAsync()).Stacks.Single().Id;
        var desk = bench.Shop.Get<StackDesk>();
        await bench.Shop.SignInAsync(bench.Shop.Technician);
        Assert.Equal(PartDesk.NotYours, await desk.RemoveAsync(bench.Studs.Car, stack));
        Assert.Single((await bench.ReadAsync()).Stacks);

        await bench.Shop.SignInAsync(bench.Shop.Lead);
        Assert.StartsWith("That wheel stack is not here any more", await desk.RemoveAsync(new CarId(Guid.NewGuid()), stack), StringComparison.Ordinal);
        Assert.Null(await desk.RemoveAsync(bench.Studs.Car, stack));
        Assert.Empty((await bench.ReadAsync()).Stacks);
        Assert.StartsWith("That wheel stack is not here any more", await desk.RemoveAsync(bench.Studs.Car, stack), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wheel_stack_keeps_number_and_unit_as_they_were_entered()
    {
        var form = PartsBench.Stack();
        (form.WheelPad, form.DiscHat, form.NutEnd) = ("0.55 in", "6,985 mm", "closed, 0.94 in");
        Assert.Null(await bench.Shop.Get<StackDesk>().SaveAsync(bench.Studs.Car, form));

        var parts = await bench.ReadAsync();

        var row = parts.Stacks.Single();
        Assert.Equal(("0.55 in", "6,985 mm", "0.94 in", "20"), (row.WheelPad, row.DiscHat, row.ClosedNutDepth, row.NutThread));
        var again = StackForm.Of(row);
        Assert.Equal(("0.55 in", "6,985 mm", "0.94 in"), (again.WheelPad, again.DiscHat, again.NutEnd));
        var stack = parts.Joint.Stacks.Single();
        Assert.Equal((13.97, 6.985, 23.876), (Mm(stack.WheelPad), Mm(stack.DiscHat), Mm(stack.NutEnd.ClosedDepth!.Value))); // 0.55 and 0.94 x 25.4, exact by the inch

        static double Mm(UnitsNet.Length length) => Math.Round(length.Millimeters, 6);
    }

    [Fact]
    public async Task A_wheel_of_a_thousandth_is_not_stored_as_none()
    {
        var form = PartsBench.Stack();
        form.WheelPad = "0.001";
        Assert.Null(await bench.Shop.Get<StackDesk>().SaveAsync(bench.Studs.Car, form));

        Assert.Equal(0.001, (await bench.ReadAsync()).Joint.Stacks.Single().WheelPad.Millimeters, 9);
    }

    [Fact]
    public async Task A_length_longer_than_its_field_is_refused_behind_the_page_too()
    {
        var form = PartsBench.Stack();
        form.WheelPad = "14" + new string(' ', 30) + "mm";

        Assert.Equal("It takes at most 20 letters. Shorten it.", await bench.Shop.Get<StackDesk>().SaveAsync(bench.Studs.Car, form));
        Assert.Empty((await bench.ReadAsync()).Stacks);
    }

    [Fact]
    public async Task What_was_chosen_for_a_job_that_has_ended_stays_as_it_was()
    {
        var option = await bench.AddAsync("Q4");
        Assert.Null(await bench.ChooseAsync(option, "Fits."));
        await bench.Shop.WriteAsync(
            new LogbookId(LogbookKind.Car, bench.Studs.Car.Value), new Released(ReleaseKind.Road, [bench.Studs.Job], 0, 48_210, null, null, null, ""));

        Assert.StartsWith("This job has ended", await bench.ChooseAsync(option, "Fits still."), StringComparison.Ordinal);
        Assert.StartsWith("This job has ended", await Desk.SaveAsync(bench.Studs, PartsBench.Kit("Q5")), StringComparison.Ordinal);
        Assert.Equal("Fits.", Assert.Single((await bench.ReadAsync()).Choices).Reason);
    }

    [Fact]
    public async Task Nuts_and_tools_that_come_off_again_are_not_compared()
    {
        Assert.StartsWith("There is no such group", await Desk.SaveAsync(bench.Studs with { Group = "jam-pair" }, PartsBench.Kit("Q4")), StringComparison.Ordinal);
        Assert.StartsWith("There is no such group", await Desk.SaveAsync(bench.Studs with { Group = "none" }, PartsBench.Kit("Q4")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_car_has_no_two_stacks_of_one_name()
    {
        await bench.StackAsync();

        Assert.StartsWith("This car has a wheel stack called Front already", await bench.Shop.Get<StackDesk>().SaveAsync(bench.Studs.Car, PartsBench.Stack("Front")), StringComparison.Ordinal);
        var stack = Assert.Single((await bench.ReadAsync()).Joint.Stacks);
        Assert.Equal(("front", 24.0), (stack.Name, stack.NutEnd.ClosedDepth!.Value.Millimeters));
    }
}
