using Bunit;
using Bunit.TestDoubles;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Web.Components.Bench;

namespace ShopJobs.Web.Tests.Bench;

/// <summary>
/// A card feeds the right input to the right formula and says the figure that comes out. Each expected figure is a published one
/// or was worked out by hand from the formula of the source named beside it.
/// </summary>
public sealed class BenchFigureTests : BunitContext
{
    private BunitNavigationManager Navigation => Services.GetRequiredService<BunitNavigationManager>();

    [Theory]
    // By hand, VDI 2230 long form, dw 16.63, dh 13.5 (ISO 4014, ISO 273), friction 0.10 / 0.14 / 0.18.
    [InlineData("torque-for-load?thread=M12x1.5&load=45&class=10.9&seat=hexagon&threads=dry",
        "45 kN takes 73.3 to 123 N·m, 98.3 N·m at the expected friction.")]
    // NASA-STD-5020B appendix A.2: 450 lbf·in on 3/8 in at a mean preload of 4721 lbf is K = 0.254.
    [InlineData("nut-factor?find=factor&thread=3/8-24 UNF&torque=450 lbf-in&load=4721 lbf", "The nut factor of that test is 0.254.")]
    // By hand: 110/(0.25 x 0.012), 110/(0.15 x 0.012).
    [InlineData("nut-factor?find=load&thread=M12x1.5&torque=110&k-low=0.15&k-high=0.25", "110 N·m clamps 37 to 61 kN.")]
    // By hand: 0.15 x 0.012 x 45000, 0.25 x 0.012 x 45000.
    [InlineData("nut-factor?find=torque&thread=M12x1.5&load=45&k-low=0.15&k-high=0.25", "45 kN takes 81 to 135 N·m.")]
    // VDI 2230 table A8 (memory): factor 2.0, so a third to either side.
    [InlineData("method?load=45&method=torque-estimated", "Aiming at 45 kN, it clamps 30 to 60 kN.")]
    // By hand, own arithmetic on VDI 2230: 2.84 + 0.62 nm/N, 108 kN for 90 degrees, yield under torsion at 68 to 76 kN.
    [InlineData("angle?thread=M12x1.5&class=10.9&grip=40&shank=20&head=16.6&hole=13.5&material=steel&threads=dry&snug=40&turn=90",
        "After the turn it clamps 69 to 76 kN: the bolt is at yield.")]
    // The same turned by 30 degrees only, 36 kN: 14.6 + 36.1 at the greatest friction, 24.6 + 36.1 at the least.
    [InlineData("angle?thread=M12x1.5&class=10.9&grip=40&shank=20&head=16.6&hole=13.5&material=steel&threads=dry&snug=40&turn=30",
        "After the turn it clamps 51 to 61 kN, below yield.")]
    // Snug so hard that the bolt yields before it is turned: the load stays where it yields.
    [InlineData("angle?thread=M12x1.5&class=10.9&grip=40&shank=20&head=16.6&hole=13.5&material=steel&threads=dry&snug=300&turn=0",
        "After the turn it clamps 69 to 76 kN: the bolt is at yield.")]
    // Shigley chapter 8, by hand: C = 0.18; 40 + 0.18 x 10, 40 - 0.82 x 10.
    [InlineData("working-load?thread=M12x1.5&class=10.9&grip=40&shank=20&head=16.6&hole=13.5&material=steel&clamp=40&load=10",
        "The bolt feels 42 kN; 32 kN still presses the faces together.")]
    [InlineData("working-load?thread=M12x1.5&grip=40&shank=20&head=16.6&hole=13.5&material=steel&clamp=4&load=10",
        "The faces part: the clamp load is gone at 0.488 times the load.")]
    // VDI 2230-1 table 5 (memory): 3 + 2 x 4.5 + 2.5 = 14.5 um over 3.46 nm/N is 4.2 kN of 40.
    [InlineData("settling?thread=M12x1.5&grip=40&shank=20&head=16.6&hole=13.5&material=steel&made=40&roughness=medium&load-kind=shear&heads=two&inner=1",
        "It loses 10 %: 36 kN of 40 kN is left.")]
    // ISO 898-1 tables of proof and ultimate loads: M10 10.9, 48 100 N and 60 300 N.
    [InlineData("strength?thread=M10&class=10.9", "M10x1.5 10.9 bears 48 kN without stretching for good, and breaks at 60 kN or more.")]
    // ISO 898-1: stress area of M10 58.0 mm²; d2 9.026 mm, d3 8.160 mm (ISO 724).
    [InlineData("thread?thread=M10", "M10x1.5: stress area 58 mm², pitch diameter 9.03 mm, core 8.16 mm.")]
    // Own arithmetic, the worked stack: 45 - 8 - 7 - 12 = 18 mm for a nut of 14 mm, 9.33 turns.
    [InlineData("wheel-stud?thread=M12x1.5&stud=45&flange=8&hat=7&spacer=0&pad=12&washer=0&nut-thread=14&nut=open",
        "It fits: 14.0 mm engaged, 9.3 turns.")]
    // The same stud in a closed nut of 16 mm: 2 mm too long.
    [InlineData("wheel-stud?thread=M12x1.5&stud=45&flange=8&hat=7&spacer=0&pad=12&washer=0&nut-thread=14&nut=closed&depth=16",
        "It does not fit: 14.0 mm engaged, 9.3 turns.")]
    // Own statics by hand, jam 90 N·m, Dm 14.315: creep from 69.4 at friction 0.08, 76.3 at 0.16.
    [InlineData("two-nuts?thread=M12x1.5&jam=90&drive=73", "Perhaps: the pair may creep from 69.4 N·m at low friction, 76.3 N·m at high.")]
    [InlineData("two-nuts?thread=M12x1.5&jam=90&drive=65", "Yes: the pair may creep from 69.4 N·m, and 65 N·m stays below.")]
    [InlineData("two-nuts?thread=M12x1.5&jam=90&drive=95", "No: the nuts jammed at 90 N·m turn against each other before 95 N·m is reached.")]
    // FAA AC 43.13-1B 7-40: the run-down torque is added.
    [InlineData("run-down?thread=M12x1.5&least=80&rule=add&run-down-least=2&run-down-greatest=12&measured=6&used=new",
        "Set 86 N·m (steps of 1 N·m); 80 N·m of it clamps.")]
    // NASA-STD-5020B: least torque less the greatest run-down, greatest less the least.
    [InlineData("run-down?thread=M12x1.5&least=80&greatest=90&rule=includes&run-down-least=2&run-down-greatest=12&measured=6&used=new",
        "Set 80 to 90 N·m; 68 to 88 N·m of it clamps.")]
    // US Army TM 5-3805-248-23-1: 70 %, then all.
    [InlineData("stages?final=110&stages=two&graduation=1", "77 N·m, then 110 N·m (steps of 1 N·m).")]
    // Steps of 5 lbf·ft under a final torque in N·m: 77 N·m is 56.8 lbf·ft, so the mark at 55 is set, which is 74.57 N·m.
    [InlineData("stages?final=110&stages=two&graduation=5 lbf-ft", "55 lbf·ft (74.6 N·m), then 110 N·m (steps of 5 lbf·ft).")]
    [InlineData("stages?final=110&stages=three&graduation=5", "30 N·m, then 75 N·m, then 110 N·m (steps of 5 N·m).")]
    // By hand: from 60/0.96 to the smaller of 95/1.04 and 90 x 0.96/1.04.
    [InlineData("target?least=60&greatest=95&deviation=4&graduation=1&bottom=40&top=200&jam=90&jam-deviation=4", "Set 73 N·m (steps of 1 N·m). 62.5 to 83 N·m keeps it inside the permitted range.")]
    [InlineData("target?least=110&greatest=110&deviation=4&graduation=1&bottom=40&top=200", "One value is stated: set 110 N·m (steps of 1 N·m). Nothing is chosen.")]
    // 112 N·m is no multiple of 5; 110 x 480/520 = 101.54 is set on the mark at 102.
    [InlineData("target?least=112&greatest=112&deviation=4&graduation=5&bottom=40&top=200",
        "One value is stated, 112 N·m, and this wrench has no mark there (steps of 5 N·m): use one with finer steps.")]
    [InlineData("target?least=110&greatest=110&deviation=4&graduation=1&bottom=40&top=200&wrench=480&adapter=40",
        "One value is stated: set 102 N·m for 110 N·m at the fastener (steps of 1 N·m). Nothing is chosen.")]
    [InlineData("adapter?find=torque&torque=102&wrench=480&adapter=40&angle=0", "Set to 102 N·m, 111 N·m came to the fastener.")]
    [InlineData("target?least=100&greatest=104&deviation=4&graduation=1&bottom=40&top=200", "No target: with this wrench nothing keeps it inside the permitted range.")]
    // ISO 6789 (memory): 4 % above 10 N·m, 6 % at and below.
    [InlineData("tool?class=setting-graduated&torque=110", "At 110 N·m it may be off by 4 %: 106 to 114 N·m.")]
    [InlineData("tool?class=setting-graduated&torque=10", "At 10 N·m it may be off by 6 %: 9.4 to 10.6 N·m.")]
    // By hand between two points: 38.8 + (115 - 38.8) x 70/80 = 105.475; 105 alone would read as the limit itself.
    [InlineData("calibration?recorded=110&least=105&greatest=115&set-1=40&rig-1=38.8&set-2=120&rig-2=115", "105.5 N·m was given: inside 105 to 115 N·m.")]
    [InlineData("calibration?recorded=110&least=106&greatest=115&set-1=40&rig-1=38.8&set-2=120&rig-2=115", "105 N·m was given: below 106 to 115 N·m.")]
    [InlineData("calibration?recorded=130&least=105&greatest=115&set-1=40&rig-1=38.8&set-2=120&rig-2=115", "Not known: 130 N·m lies outside the points.")]
    // Both signs of a certificate: 110/1.05 = 104.76 and 110 x 1.05 = 115.5; 110/0.95 = 115.79 and 110 x 0.95 = 104.5.
    [InlineData("certificate?set=110&sign=plus&percent=5", "105 N·m or 116 N·m was given, by which of the two it is.")]
    [InlineData("certificate?set=110&sign=minus&percent=5", "116 N·m or 105 N·m was given, by which of the two it is.")]
    // US Navy NAVEDTRA 14315 fig. 3-45: 100 lbf·in, 12 in wrench, 6 in adapter, set 66.7; on a wrench with steps of 1 the mark at 67.
    [InlineData("adapter?find=setting&torque=100&wrench=12&adapter=6&angle=0&graduation=1&unit=lbf-in&lengths=in",
        "For 100 lbf·in at the fastener set 67 lbf·in (steps of 1 lbf·in).")]
    // NIST SP 811: 110/1.3558179483314004.
    [InlineData("units?torque=110 Nm&unit=lbf-ft", "110 N·m is 81.1 lbf·ft.")]
    [InlineData("reuse?used=1&allowed=1&yielded=no&damaged=no", "No.")]
    [InlineData("reuse?used=1&allowed=3&yielded=no&damaged=no", "Yes, 2 more times.")]
    [InlineData("reuse?used=0&allowed=3&yielded=yes&damaged=no", "No.")]
    public void Card_says_the_figure(string address, string sentence) => Assert.Equal(sentence, Plain(Open(address).Find(".bench-sentence")));

    /// <summary>
    /// Engaged thread by hand from FED-STD-H28 with the limits of M10, 6g (ISO 965-2: d 9.732, d2 8.862) and 6H (D2 9.206, D1 8.676):
    /// a bolt of 10.9 breaks at 1040 MPa x 58.0 mm²; the part's thread of 310 MPa strips at 3.995 kN for each millimetre.
    /// </summary>
    [Theory]
    [InlineData("10", "Not enough: a thread strips at 40 kN, before the bolt breaks at 60 kN.", "15.1 mm")]
    [InlineData("18", "Enough: the bolt breaks at 60 kN, before a thread strips at 72 kN.", "15.1 mm")]
    public void Engaged_thread_is_enough_from_the_length_at_which_both_give(string engaged, string sentence, string enough)
    {
        var page = Open($"engagement?thread=M10&class=10.9&engaged={engaged}&part=310");

        Assert.Equal(sentence, Plain(page.Find(".bench-sentence")));
        Assert.Equal(enough, Figure(page, "Enough from"));
    }

    /// <summary>What is rounded for reading stays to be had in full beside it. By hand: 110 x 480/520, 102 x 520/480, 110 x 0.96 and 1.04.</summary>
    [Theory]
    [InlineData("adapter?find=setting&torque=110&wrench=480&adapter=40&angle=0&graduation=1", "Set, not rounded", "101.538 N·m")]
    [InlineData("adapter?find=setting&torque=110&wrench=480&adapter=40&angle=0&graduation=1", "The mark brings", "110.5 N·m")]
    [InlineData("tool?class=setting-graduated&torque=110", "Given, not rounded", "105.6 to 114.4 N·m")]
    [InlineData("calibration?recorded=110&least=105&greatest=115&set-1=40&rig-1=38.8&set-2=120&rig-2=115", "Given, not rounded", "105.475 N·m")]
    [InlineData("certificate?set=110&sign=plus&percent=5", "Deviation, ISO 6789", "104.76 N·m")]
    [InlineData("run-down?thread=M12x1.5&least=80&rule=add&run-down-least=2&run-down-greatest=12&measured=6.4&graduation=1&used=new", "Set, not rounded", "86.4 N·m")]
    public void Exact_figure_stands_among_the_details(string address, string what, string figure) => Assert.Equal(figure, Figure(Open(address), what));

    private static string Figure(IRenderedComponent<BenchCardPage> page, string what) =>
        Plain(page.FindAll(".bench-lines > div").Single(line => line.QuerySelector("dt")!.TextContent == what).QuerySelector("dd")!);

    // Figure and unit are kept on one line by a space that does not break.
    private static string Plain(AngleSharp.Dom.IElement element) => element.TextContent.Replace('\u00a0', ' ');

    private IRenderedComponent<BenchCardPage> Open(string address)
    {
        Navigation.NavigateTo($"/bench/{address.Replace(" ", "%20", StringComparison.Ordinal)}");
        var key = new Uri(Navigation.Uri).Segments[^1];
        return Render<BenchCardPage>(parameters => parameters.Add(page => page.Key, key));
    }
}
