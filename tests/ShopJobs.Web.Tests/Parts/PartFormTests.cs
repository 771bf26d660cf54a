using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.Layout;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Data.Parts;

namespace ShopJobs.Web.Tests.Parts;

/// <summary>The forms of an option and of a wheel stack: what is wrong stands beside its field, and nothing typed is lost.</summary>
public sealed class PartFormTests : BunitContext, IAsyncLifetime
{
    private readonly PartsBench bench = new();

    public PartFormTests() => bench.Register(Services);

    Task IAsyncLifetime.InitializeAsync() => bench.OpenAsync(Services);

    async Task IAsyncLifetime.DisposeAsync()
    {
        await DisposeAsync();
        bench.Dispose();
    }

    [Fact]
    public async Task An_empty_form_asks_for_each_value_or_that_it_is_not_stated()
    {
        var page = OptionPage();
        await page.Find("form").SubmitAsync(new());

        Assert.Equal("Write who makes it.", page.Find("#maker-wrong").TextContent);
        Assert.StartsWith("Write the source: document", page.Find("#source-wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal(9, page.FindAll(".stated .form-wrong").Count(wrong => wrong.TextContent.Trim() == "Write it, or tick not stated."));
        Assert.Contains("12 fields are not in order yet", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Empty((await bench.ReadAsync()).Options);
    }

    [Fact]
    public async Task A_wrong_value_is_told_beside_its_field_and_the_others_stay_as_typed()
    {
        var page = OptionPage();
        await TypeAsync(page, ("#maker", "Quillon"), ("#name", "Q4"), ("#source", "Leaflet"), ("#value-thread", "M12x1.5"), ("#value-length", "-42 mm"));
        await page.Find("form").SubmitAsync(new());

        Assert.Contains("has a sign", page.Find("#value-length-wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal("-42 mm", page.Find("#value-length").GetAttribute("value"));
        Assert.Equal("true", page.Find("#value-length").GetAttribute("aria-invalid"));
        Assert.Equal("", page.Find("#value-thread-wrong").TextContent.Trim());
        Assert.Equal("M12x1.5", page.Find("#value-thread").GetAttribute("value"));

        await TypeAsync(page, ("#value-length", "42 mm"));
        Assert.Equal("", page.Find("#value-length-wrong").TextContent.Trim());
    }

    [Fact]
    public async Task Not_stated_is_a_value_beside_each_field()
    {
        var page = OptionPage();
        await TypeAsync(page, ("#maker", "Quillon"), ("#name", "Q0"), ("#source", "Bag label"), ("#value-thread", "M12x1.5"));
        foreach (var property in new[] { "strength", "length", "seat", "torque", "jam", "condition", "pieces", "price" })
        {
            await page.Find($"#value-{property}-not-stated").ChangeAsync(new ChangeEventArgs { Value = true });
        }

        await page.Find("form").SubmitAsync(new());

        Assert.EndsWith(Links.Options(bench.Studs.Car, bench.Studs.Job, "stud"), Services.GetRequiredService<NavigationManager>().Uri, StringComparison.Ordinal);
        Assert.Equal([OptionProperty.Thread], (await bench.ReadAsync()).Options.Single().Values.Select(value => value.Property));
    }

    [Fact]
    public async Task A_kit_with_its_own_nut_is_asked_for_the_nut()
    {
        var page = OptionPage();
        Assert.Empty(page.FindAll("#value-nutseat"));

        await page.Find("#own-nut").ChangeAsync(new ChangeEventArgs { Value = true });
        await page.Find("form").SubmitAsync(new());

        Assert.Equal(13, page.FindAll(".stated .form-wrong").Count(wrong => wrong.TextContent.Trim() == "Write it, or tick not stated."));
    }

    [Fact]
    public async Task A_refused_kit_keeps_its_form()
    {
        await bench.AddAsync("Q4");
        var page = OptionPage((await bench.ReadAsync()).Options.Single().Id.Value);
        Assert.Equal("84.50 EUR", page.Find("#value-price").GetAttribute("value"));
        await bench.AddAsync("Q5");
        await TypeAsync(page, ("#name", "q5"), ("#value-price", "90 EUR"));

        await page.Find("form").SubmitAsync(new());

        page.WaitForAssertion(() => Assert.Contains("Quillon q5 is compared here already", page.Find("[role=alert]").TextContent, StringComparison.Ordinal));
        Assert.Equal("90 EUR", page.Find("#value-price").GetAttribute("value"));
    }

    [Fact]
    public async Task A_stack_is_told_what_is_wrong_beside_each_field_and_saved_when_it_is_right()
    {
        var page = Render<StackFormPage>(parameters => parameters
            .Add(one => one.Id, bench.Studs.Car.Value).Add(one => one.Job, bench.Studs.Job.Value).Add(one => one.Group, "stud"));
        (string Field, string Value)[] typed =
        [
            ("#name", "front"), ("#hub", "-1"), ("#disc", "7 kg"), ("#spacer", "0"), ("#pad", "0"), ("#washer", "0"),
            ("#wheel-seat", "cone 60"), ("#nut-seat", "cone 60"), ("#nut-thread", "20"), ("#nut-end", "15"), ("#nut-class", "11"),
        ];
        foreach (var (field, value) in typed)
        {
            await page.Find(field).ChangeAsync(new ChangeEventArgs { Value = value });
        }

        await page.Find("form").SubmitAsync(new());

        Assert.Contains("has a sign", page.Find("#hub-wrong").TextContent, StringComparison.Ordinal);
        Assert.Contains("no length known here", page.Find("#disc-wrong").TextContent, StringComparison.Ordinal);
        Assert.Contains("above 0", page.Find("#pad-wrong").TextContent, StringComparison.Ordinal);
        Assert.Contains("at least as deep as its thread", page.Find("#nut-end-wrong").TextContent, StringComparison.Ordinal);
        Assert.Contains("no nut class", page.Find("#nut-class-wrong").TextContent, StringComparison.Ordinal);
        Assert.Equal("-1", page.Find("#hub").GetAttribute("value"));
        Assert.Empty((await bench.ReadAsync()).Stacks);

        foreach (var (field, value) in new[] { ("#hub", "0"), ("#disc", "7"), ("#pad", "14"), ("#nut-end", "24"), ("#nut-class", "") })
        {
            await page.Find(field).ChangeAsync(new ChangeEventArgs { Value = value });
        }

        await page.Find("form").SubmitAsync(new());

        var stack = Assert.Single((await bench.ReadAsync()).Stacks);
        Assert.Equal(("front", "7", "14", "24", null), (stack.Name, stack.DiscHat, stack.WheelPad, stack.ClosedNutDepth, stack.NutClass));
    }

    private IRenderedComponent<OptionFormPage> OptionPage(Guid? option = null) => Render<OptionFormPage>(parameters => parameters
        .Add(page => page.Id, bench.Studs.Car.Value).Add(page => page.Job, bench.Studs.Job.Value)
        .Add(page => page.Group, "stud").Add(page => page.Option, option));

    private static async Task TypeAsync(IRenderedComponent<OptionFormPage> page, params (string Field, string Value)[] typed)
    {
        foreach (var (field, value) in typed)
        {
            await page.Find(field).InputAsync(new ChangeEventArgs { Value = value });
        }
    }
}
