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

    /// <summary>Letters at 24 px that fit a phone 390 px wide, in two lines beside its mark (counted on the drawn page).</summary>
    private const int LongestShort = 40;

    private BunitNavigationManager Navigation => Services.GetRequiredService<BunitNavigationManager>();

    /// <summary>The figures are those of the clamp band's own test: VDI 2230 long form, 110 N·m, friction 0.10 to 0.18, 4 %.</summary>
    [Fact]
    public void Address_in_is_the_answer_out()
    {
        var page = Open(WheelNut);

        Assert.Equal("110 N·m (dry) clamps 37 to 68 kN, expected 49 kN.", Plain(page.Find(".bench-sentence")));
        Assert.Equal("37 to 68 kN", Plain(page.Find(".bench-short")));
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
    public void A_figure_that_nobody_entered_stays_marked_on_the_page_on_paper_and_in_the_address()
    {
        var page = Open("/bench/clamp-load");
        Assert.Empty(page.FindAll(".bench-chip"));

        page.Find("#bench-torque").Input("95");

        Assert.Empty(page.FindAll("label[for=bench-torque] .bench-chip"));
        Assert.Single(page.FindAll("label[for=bench-thread] .bench-chip"));
        Assert.Contains("What is marked", page.Find(".bench-example").TextContent, StringComparison.Ordinal);
        var again = Open(Navigation.Uri);
        Assert.Empty(again.FindAll("label[for=bench-torque] .bench-chip"));
        Assert.Single(again.FindAll("label[for=bench-thread] .bench-chip"));
        Assert.Equal("95 N·m", Printed(again, "Torque"));
        Assert.Equal("M12x1.5 (invented example)", Printed(again, "Thread"));

        static string Printed(IRenderedComponent<BenchCardPage> page, string label) =>
            page.FindAll(".bench-entries > div").Single(entry => entry.QuerySelector("dt")!.TextContent == label).QuerySelector("dd")!.TextContent;
    }

    [Fact]
    public void What_the_address_does_not_carry_is_marked_as_the_example_also_where_it_is_asked_only_later()
    {
        Assert.Single(Open("/bench/clamp-load?torque=95").FindAll("label[for=bench-thread] .bench-chip"));
        var page = Open("/bench/wheel-stud?thread=M12x1.5&stud=45&flange=8&hat=7&spacer=0&pad=12&washer=0&nut-thread=14&nut=open");
        Assert.Empty(page.FindAll(".bench-chip"));

        page.Find("#bench-nut").Change("closed");

        Assert.Single(page.FindAll("label[for=bench-depth] .bench-chip"));
    }

    [Theory]
    [InlineData("", "Nothing entered: write a load, for example 45 or 45 kN.")]
    [InlineData("-4", "“-4” has a sign: write it without one.")]
    [InlineData("0", "It must be above 0.")]
    [InlineData("99999", "“99999” is more than any bolt here bears. Read it again.")]
    [InlineData("45 Nm", "“45 Nm” is no load known here: write kN, N or lbf, for example 45 or 45 kN.")]
    [InlineData("<b>45</b>", "“<b>45</b>” does not start with a number: write it as 45 or 45 kN.")]
    public void Load_that_cannot_be_read_is_said_in_plain_words_and_nothing_is_computed(string typed, string said)
    {
        var page = Open($"/bench/method?load={Uri.EscapeDataString(typed)}&method=angle");

        Assert.Equal(said, page.Find("#bench-load-wrong").TextContent);
        Assert.Empty(page.FindAll(".bench-sentence"));
    }

    /// <summary>What only the inputs together say: each is told at the field to change.</summary>
    [Theory]
    [InlineData("angle?thread=M12x1.5&class=10.9&grip=10&shank=20&head=16.6&hole=13.5&material=steel&threads=dry&snug=40&turn=90", "shank", "longer than the clamped length")]
    [InlineData("settling?thread=M16&grip=40&shank=20&head=24&hole=13.5&material=steel&made=40&roughness=fine&load-kind=pull&heads=one&inner=0", "hole", "does not pass through")]
    [InlineData("working-load?thread=M12x1.5&grip=40&shank=20&head=16.6&hole=13.5&material=steel&width=15&clamp=40&load=10", "width", "at least as wide as the face")]
    [InlineData("strength?thread=M12x1.5&class=SAE 8", "class", "is not written for")]
    [InlineData("engagement?thread=M150x6&class=10.9&engaged=18&part=310", "class", "no 10.9")]
    [InlineData("nut-factor?find=load&thread=M12&torque=110&k-low=0.3&k-high=0.2", "k-low", "swap them")]
    [InlineData("run-down?thread=M12&least=80&rule=add&run-down-least=9&run-down-greatest=2&used=new", "run-down-least", "swap them")]
    [InlineData("two-nuts?thread=1/2-20 UNF&jam=90&drive=73", "face", "No plain nut is tabled")]
    [InlineData("target?least=60&greatest=95&deviation=4&graduation=1&bottom=200&top=40", "top", "above its lowest mark")]
    [InlineData("tool?class=setting-graduated&torque=110&first=2026-03-01&day=2026-02-01&cycles=0&dropped=no", "day", "before it was calibrated")]
    [InlineData("calibration?recorded=110&least=120&greatest=115&set-1=40&rig-1=38.8&set-2=120&rig-2=115", "least", "above the greatest")]
    public void Inputs_that_cannot_be_together_are_said_at_the_one_to_change(string address, string field, string said)
    {
        var page = Open($"/bench/{address}");

        Assert.Contains(said, page.Find($"#bench-{field}-wrong").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".bench-sentence"));
    }

    /// <summary>What the answer cautions of, beside the figure.</summary>
    [Theory]
    [InlineData("torque-for-load?thread=M12x1.5&load=80&class=10.9&seat=hexagon&threads=dry", "above the proof load")]
    [InlineData("strength?thread=M12&class=10.9&nut=8", "may strip before the bolt breaks")]
    [InlineData("run-down?thread=1/2-20 UNF&least=80&rule=includes&run-down-least=1&run-down-greatest=12&measured=0&used=used", "no longer locks")]
    [InlineData("run-down?thread=1/2-20 UNF&least=80&rule=includes&run-down-least=0.5&run-down-greatest=12&measured=1&used=used", "below the least, 10 lbf·in")]
    [InlineData("tool?class=setting-graduated&torque=110&first=2025-03-01&day=2026-03-01&cycles=0&dropped=no", "It is due")]
    [InlineData("tool?class=setting-graduated&torque=110&first=2026-02-01&day=2026-03-01&cycles=0&dropped=yes", "It is due")]
    [InlineData("wheel-stud?thread=M12x1.5&stud=45&flange=8&hat=7&spacer=0&pad=12&washer=0&nut-thread=14&nut=closed&depth=16", "bottoms in the closed nut by 2 mm")]
    [InlineData("calibration?recorded=110&least=106&greatest=115&set-1=40&rig-1=38.8&set-2=120&rig-2=115", "hold it")]
    public void Answer_cautions(string address, string said)
    {
        Assert.Contains(said, Plain(Open($"/bench/{address}").Find(".bench-cautions")), StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_of_a_stud_says_in_words_what_it_draws()
    {
        var page = Open("/bench/wheel-stud?thread=M12x1.5&stud=45&flange=8&hat=7&spacer=0&pad=12&washer=0&nut-thread=14&nut=closed&depth=16");

        Assert.Equal(
            "hub flange 8.0 mm, disc hat 7.0 mm, wheel 12.0 mm; stud 45.0 mm; engaged in the nut 14.0 mm; the stud bottoms in the nut",
            page.Find(".stack svg").GetAttribute("aria-label"));
        Assert.Equal(3, page.FindAll(".stack-part").Count);
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
        Assert.StartsWith("95 N·m", Plain(page.Find(".bench-sentence")), StringComparison.Ordinal);
    }

    /// <summary>A blank and a percent sign are escaped in the address: it is this page's own all the same.</summary>
    [Theory]
    [InlineData("M12 x", "M12 x1.5")]
    [InlineData("M12%", "M12%2")]
    public void An_address_with_escapes_heard_late_does_not_overwrite_what_was_typed_since(string first, string then)
    {
        var late = new LateNavigation("http://localhost" + WheelNut);
        Services.AddSingleton<NavigationManager>(late);
        var page = Render<BenchCardPage>(parameters => parameters.Add(card => card.Key, "clamp-load"));
        page.Find("#bench-thread").Input(first);
        page.Find("#bench-thread").Input(then);

        late.HearNext();

        Assert.Equal(then, page.Find("#bench-thread").GetAttribute("value"));
    }

    [Fact]
    public void Another_address_of_the_same_card_opened_from_outside_is_followed()
    {
        var page = Open(WheelNut);

        Navigation.NavigateTo(WheelNut.Replace("torque=110", "torque=80", StringComparison.Ordinal));

        page.WaitForAssertion(() => Assert.StartsWith("80 N·m", Plain(page.Find(".bench-sentence")), StringComparison.Ordinal));
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
        Assert.StartsWith("81.1 lbf·ft (dry) clamps 37 to 68 kN", Plain(page.Find(".bench-sentence")), StringComparison.Ordinal);
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

    [Theory]
    [InlineData("clamp-load", true, true)]
    [InlineData("torque-for-load", true, true)]
    [InlineData("thread", false, true)]
    [InlineData("certificate", true, false)]
    [InlineData("reuse", false, false)]
    public void Only_units_that_the_card_speaks_can_be_picked(string card, bool torque, bool length)
    {
        var page = Open($"/bench/{card}");

        Assert.Equal((torque, length), (page.FindAll("#unit").Count == 1, page.FindAll("#lengths").Count == 1));
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

    [Theory]
    [MemberData(nameof(Cards))]
    public void Each_card_says_its_answer_before_it_asks_and_draws_it(string key)
    {
        var page = Open($"/bench/{key}");

        Assert.InRange(Plain(page.Find(".bench-short strong")).Length, 2, LongestShort);
        Assert.NotEmpty(page.FindAll(".bench-answer figure svg[role=img][aria-label]"));
        var order = page.FindAll(".bench-short, .bench-answer, .bench-asked, .bench-details").Select(part => part.ClassList.First(name => name.StartsWith("bench-", StringComparison.Ordinal)));
        Assert.Equal(["bench-short", "bench-answer", "bench-asked", "bench-details"], [.. order, .. page.FindAll(".bench-details").Count == 0 ? ["bench-details"] : Array.Empty<string>()]);
    }

    /// <summary>What is read off at the top carries three significant figures; what was entered stands as it was entered.</summary>
    [Theory]
    [MemberData(nameof(Cards))]
    public void Each_cards_answer_is_rounded_to_what_can_be_known(string key)
    {
        var words = Plain(Open($"/bench/{key}").Find(".bench-short strong"));

        foreach (System.Text.RegularExpressions.Match figure in System.Text.RegularExpressions.Regex.Matches(words, "[0-9]+([.][0-9]+)?"))
        {
            Assert.InRange(figure.Value.Replace(".", "", StringComparison.Ordinal).TrimStart('0').Length, 0, figure.Value == "105.5" ? 4 : 3);
        }
    }

    [Fact]
    public void Nothing_is_answered_large_while_an_entry_cannot_be_read()
    {
        var page = Open(WheelNut.Replace("torque=110", "torque=1x", StringComparison.Ordinal));

        Assert.Equal("No answer yet", page.Find(".bench-short").TextContent);
        Assert.Empty(page.FindAll(".bench-details, .bench-answer figure"));
    }

    [Fact]
    public void Link_to_an_answer_can_be_copied_with_all_that_was_entered() =>
        Assert.StartsWith("/bench/clamp-load?thread=M12x1.5&torque=110", Open(WheelNut).Find("button[data-copies]").GetAttribute("data-copies"), StringComparison.Ordinal);

    [Fact]
    public void List_draws_each_cards_example_small()
    {
        var page = Render<BenchPage>();

        Assert.All(page.FindAll(".bench-link"), link => Assert.Single(link.QuerySelectorAll("figure svg[aria-hidden=true]")));
    }

    public static TheoryData<string> Cards => [.. BenchCards.Groups.SelectMany(group => group.Cards).Select(card => card.Key)];

    private IRenderedComponent<BenchCardPage> Open(string address)
    {
        Navigation.NavigateTo(address.Replace(" ", "%20", StringComparison.Ordinal));
        var key = new Uri(Navigation.Uri).Segments[^1];
        return Render<BenchCardPage>(parameters => parameters.Add(page => page.Key, key));
    }

    // Figure and unit are kept on one line by a space that does not break.
    private static string Plain(AngleSharp.Dom.IElement element) => element.TextContent.Replace('\u00a0', ' ');
}
