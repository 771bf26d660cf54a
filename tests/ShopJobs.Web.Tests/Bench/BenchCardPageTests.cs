using System.Globalization;
using Bunit;
using Bunit.TestDoubles;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.Bench;
using ShopJobs.Web.Components.Fasteners;

namespace ShopJobs.Web.Tests.Bench;

public sealed class BenchCardPageTests : BunitContext
{
    private const string WheelNut =
        "/bench/clamp-load?thread=M12x1.5&torque=110&class=10.9&seat=flat&head=19&hole=13.5&threads=dry&deviation=4&unit=Nm&lengths=mm";

    private BunitNavigationManager Navigation => Services.GetRequiredService<BunitNavigationManager>();

    /// <summary>The figures are those of the clamp band's own test: VDI 2230 long form, 110 N·m, friction 0.10 to 0.18, 4 %.</summary>
    [Fact]
    public void Address_in_is_the_answer_out()
    {
        var page = Open(WheelNut);

        Assert.Equal("110 N·m (dry) clamps 37 kN to 68 kN, expected 49 kN.", page.Find(".bench-sentence").TextContent);
        Assert.Equal("19", page.Find("#bench-head").GetAttribute("value"));
        Assert.Empty(page.FindAll(".bench-example"));
    }

    [Fact]
    public void Card_without_entries_shows_its_example_and_says_that_it_is_invented()
    {
        var page = Open("/bench/clamp-load");

        Assert.Contains("An invented example", page.Find(".bench-example").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".bench-sentence"));
    }

    [Fact]
    public void Address_follows_what_is_typed_in_place_of_the_old_one_and_reopens_to_the_same_answer()
    {
        var page = Open(WheelNut);

        page.Find("#bench-torque").Input("95,5");

        var written = Navigation.History.First();
        Assert.True(written.Options.ReplaceHistoryEntry);
        Assert.Contains("torque=95%2C5", Navigation.Uri, StringComparison.Ordinal);
        var answer = page.Find(".bench-answer").InnerHtml;
        Assert.Equal(answer, Open(Navigation.Uri).Find(".bench-answer").InnerHtml);
    }

    [Fact]
    public void An_address_heard_late_does_not_overwrite_what_was_typed_since()
    {
        var late = new LateNavigation("http://localhost" + WheelNut);
        Services.AddSingleton<NavigationManager>(late);
        var page = Render<BenchCardPage>(parameters => parameters.Add(card => card.Key, "clamp-load"));
        page.Find("#bench-torque").Input("9");
        page.Find("#bench-torque").Input("95");

        late.HearNext();

        Assert.Equal("95", page.Find("#bench-torque").GetAttribute("value"));
        Assert.StartsWith("95 N·m", page.Find(".bench-sentence").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_address_of_the_same_card_opened_from_outside_is_followed()
    {
        var page = Open(WheelNut);

        Navigation.NavigateTo(WheelNut.Replace("torque=110", "torque=80", StringComparison.Ordinal));

        page.WaitForAssertion(() => Assert.StartsWith("80 N·m", page.Find(".bench-sentence").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public void Changing_units_leaves_the_physical_answer_as_it_was()
    {
        var page = Open(WheelNut);
        var before = page.FindComponent<ClampBandPicture>().Instance.Standing;

        page.Find("#unit").Change("PoundForceFoot");
        page.Find("#lengths").Change("Inch");

        Assert.Equal("110 N·m", page.Find("#bench-torque").GetAttribute("value"));
        Assert.Equal("19 mm", page.Find("#bench-head").GetAttribute("value"));
        Assert.StartsWith("81.1 lbf·ft (dry) clamps 37 kN", page.Find(".bench-sentence").TextContent, StringComparison.Ordinal);
        Assert.Equal(before.Rows.Select(row => row.Band), page.FindComponent<ClampBandPicture>().Instance.Standing.Rows.Select(row => row.Band));

        page.Find("#unit").Change("NewtonMetre");
        Assert.Equal("110", page.Find("#bench-torque").GetAttribute("value"));
    }

    [Theory]
    [InlineData("", "Nothing entered: enter a torque, for example 110 or 81 lbf·ft.")]
    [InlineData("-5", "\"-5\" has a sign: a torque is entered without one.")]
    [InlineData("0", "It must be above 0.")]
    [InlineData("999999", "999999 N·m is more than any hand tool reaches. Read it again.")]
    [InlineData("1,100.5", "\"1,100.5\" has a comma and a point: write one decimal mark only and no thousands mark, for example 1100.5.")]
    [InlineData("110 psi", "\"110 psi\" has no unit known here: use N·m, lbf·ft, lbf·in or kgf·m.")]
    [InlineData("<script>alert(1)</script>", "\"<script>alert(1)</script>\" does not start with a number: enter the torque as digits, for example 110.")]
    [InlineData("1111111111111111111111111111111111111111111111111111", "“1111111111111111111111111111111111111111…” is too long: it takes at most 40 letters.")]
    public void Torque_that_cannot_be_read_is_said_in_plain_words_and_nothing_is_computed(string typed, string said)
    {
        var page = Open(WheelNut.Replace("torque=110", $"torque={Uri.EscapeDataString(typed)}", StringComparison.Ordinal));

        Assert.Equal(said, page.Find("#bench-torque-wrong").TextContent);
        Assert.Equal("true", page.Find("#bench-torque").GetAttribute("aria-invalid"));
        Assert.Contains("One entry can't be read", page.Find(".bench-answer").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("script"));
    }

    [Theory]
    [InlineData("head", "wide", "“wide” does not start with a number: write it as 12.5 or 12.5 mm.")]
    [InlineData("head", "3/4", "“3/4” is a fraction: write its unit, 3/4 in.")]
    [InlineData("head", "12 cm", "“12 cm” is no length known here: write millimetres or inches, for example 12.5 or 12.5 mm.")]
    [InlineData("head", "-19", "“-19” has a sign: write it without one.")]
    [InlineData("head", "13", "The face must be wider than its hole: measure both again.")]
    [InlineData("thread", "M13", "\"M13\" has no coarse pitch in ISO 261: write the pitch, for example M12x1.5.")]
    [InlineData("deviation", "400", "“400” is outside 0 to 50 %: read it again.")]
    [InlineData("seat", "square", "Pick one.")]
    [InlineData("least", "100", null)]
    public void Field_that_cannot_be_read_is_said_beside_it(string field, string typed, string? said)
    {
        var key = FormattableString.Invariant($"{field}=");
        var address = string.Join('&', WheelNut.Split('&').Where(part => !part.StartsWith(key, StringComparison.Ordinal)))
            .Replace($"?{key}M12x1.5", "?", StringComparison.Ordinal);

        var page = Open($"{address}&{key}{Uri.EscapeDataString(typed)}");

        Assert.Equal(said ?? "", page.Find($"#bench-{field}-wrong").TextContent);
        Assert.Empty(page.FindAll(".bench-sentence"));
    }

    [Fact]
    public void Unit_that_is_not_known_is_said_and_nothing_is_computed()
    {
        var page = Open(WheelNut.Replace("unit=Nm", "unit=furlong", StringComparison.Ordinal));

        Assert.Contains("a unit that is not known here", page.Find("#unit-wrong").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".bench-sentence"));
    }

    [Fact]
    public void Card_that_does_not_exist_leads_back_to_the_bench()
    {
        Assert.Equal("/bench", Open("/bench/tea").Find("a.button").GetAttribute("href"));
    }

    [Theory]
    [MemberData(nameof(Cards))]
    public void Each_card_answers_its_example_and_tells_how(string key)
    {
        var page = Open($"/bench/{key}");

        Assert.Empty(page.FindAll(".form-wrong span"));
        Assert.EndsWith(".", page.Find(".bench-sentence").TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.FindAll(".bench-formula"));
        Assert.NotEmpty(page.FindAll(".bench-signs dt"));
        Assert.DoesNotContain("NaN", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", page.Markup, StringComparison.Ordinal);
    }

    /// <summary>Nothing on the page depends on the machine's language.</summary>
    [Theory]
    [MemberData(nameof(Cards))]
    public void Each_card_reads_the_same_on_a_machine_of_another_language(string key)
    {
        var here = Open($"/bench/{key}").Find(".bench-answer").InnerHtml;
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(here, Open($"/bench/{key}").Find(".bench-answer").InnerHtml);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Fact]
    public void List_leads_to_every_card_once()
    {
        var links = Render<BenchPage>().FindAll(".bench-link").Select(link => link.GetAttribute("href")).ToList();

        Assert.Equal(BenchCards.Groups.SelectMany(group => group.Cards).Select(card => $"/bench/{card.Key}"), links);
        Assert.Equal(links.Count, links.Distinct().Count());
    }

    public static TheoryData<string> Cards => [.. BenchCards.Groups.SelectMany(group => group.Cards).Select(card => card.Key)];

    private IRenderedComponent<BenchCardPage> Open(string address)
    {
        Navigation.NavigateTo(address);
        var key = new Uri(Navigation.Uri).Segments[^1];
        return Render<BenchCardPage>(parameters => parameters.Add(page => page.Key, key));
    }
}
