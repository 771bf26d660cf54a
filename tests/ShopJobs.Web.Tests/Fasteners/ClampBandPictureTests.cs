using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Web.Components.Fasteners;
using UnitsNet;

namespace ShopJobs.Web.Tests.Fasteners;

public sealed class ClampBandPictureTests : BunitContext
{
    private static readonly TorqueSpecification WheelNut = new()
    {
        Thread = ThreadSize.Parse("M12x1.5"),
        Class = StrengthClass.Parse("10.9"),
        Seat = new FlatSeat(Length.FromMillimeters(19), Length.FromMillimeters(13.5)),
        Condition = ThreadCondition.Dry,
        Permitted = new(Nm(105), Nm(115)),
        Risk = RiskClass.A,
    };

    [Fact]
    public void Joint_without_a_seat_says_that_its_band_is_not_computed_and_why()
    {
        var picture = Draw(WheelNut with { Seat = null });

        Assert.Equal("Band not computed for this: no seat is given.", picture.Find(".clamp-words").TextContent);
        Assert.Empty(picture.FindAll("svg"));
    }

    [Fact]
    public void Reason_for_no_band_is_said_once_for_all_conditions()
    {
        var picture = Draw(WheelNut with { Seat = null }, ThreadCondition.Oiled, ThreadCondition.Locker);

        Assert.Equal("Band not computed for this: no seat is given.", Assert.Single(picture.FindAll(".clamp p:not(.quiet)")).TextContent);
    }

    [Fact]
    public void Joint_without_a_condition_says_so()
    {
        var picture = Draw(WheelNut with { Condition = null });

        Assert.Equal("Band not computed for this: the condition of the threads is not given.", picture.Find(".clamp-words").TextContent);
    }

    /// <summary>
    /// 110 N·m on M12x1.5 with Dm (19+13.5)/2, a tool of 4 % and mu 0.18/0.14/0.10 by the long form of VDI 2230; proof load of class
    /// 10.9 is 830 MPa x 88.1 mm2 = 73.1 kN (ISO 898-1 figures as reprinted).
    /// </summary>
    [Fact]
    public void Band_stands_against_the_proof_load_in_words_and_on_the_line()
    {
        var picture = Draw(WheelNut);

        Assert.Equal("37 / 49 / 68 kN, 51 % to 93 % of proof load 73 kN", picture.Find(".clamp-words").TextContent);
        var span = picture.Find(".clamp-drawing .clamp-span");
        var proof = At(picture.Find(".clamp-drawing .is-proof"), "x1");
        Assert.Equal(68 / 73.1, (At(span, "x") + At(span, "width")) / proof, 0.01);
        Assert.Equal(49 / 73.1, At(picture.Find(".clamp-drawing .clamp-nominal"), "x1") / proof, 0.01);
    }

    [Fact]
    public void Picture_is_told_in_words_to_who_does_not_see_it()
    {
        var picture = Draw(WheelNut, ThreadCondition.Oiled);

        var spoken = picture.FindAll("svg[role=img]").Select(drawing => drawing.GetAttribute("aria-label")!).ToList();
        Assert.Equal(2, spoken.Count);
        Assert.StartsWith("110 N·m dry: 37 / 49 / 68 kN", spoken[0], StringComparison.Ordinal);
        Assert.StartsWith("110 N·m oiled: ", spoken[1], StringComparison.Ordinal);
        Assert.All(picture.FindAll("svg:not([role])"), rest => Assert.Equal("true", rest.GetAttribute("aria-hidden")));
    }

    [Fact]
    public void Conditions_share_one_line_and_oil_moves_the_band_up()
    {
        var picture = Draw(WheelNut, ThreadCondition.Oiled, ThreadCondition.Locker);

        Assert.Equal(["dry", "oiled", "locker"], picture.FindAll(".clamp-name").Select(name => name.TextContent));
        var proofs = picture.FindAll(".clamp-drawing .is-proof").Select(line => line.GetAttribute("x1")).Distinct();
        Assert.Single(proofs);
        var nominal = picture.FindAll(".clamp-drawing .clamp-nominal").Select(line => At(line, "x1")).ToList();
        Assert.True(nominal[1] > nominal[0], "oiled clamps more than dry");
    }

    [Fact]
    public void What_passes_a_limit_is_said_and_drawn_apart()
    {
        var dry = Draw(WheelNut);
        var oiled = Draw(WheelNut with { Condition = ThreadCondition.Oiled });

        Assert.Empty(dry.FindAll(".clamp-over"));
        Assert.Single(oiled.FindAll(".clamp-over"));
        Assert.Contains("may stretch the bolt for good", oiled.Find(".clamp-warning").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Band_wholly_above_a_limit_is_drawn_as_passed_from_its_least_load()
    {
        var picture = Draw(WheelNut with { Class = StrengthClass.Parse("4.6") });

        var span = picture.Find(".clamp-drawing .clamp-span");
        var over = picture.Find(".clamp-drawing .clamp-over");
        Assert.Equal(span.GetAttribute("x"), over.GetAttribute("x"));
        Assert.Equal(span.GetAttribute("width"), over.GetAttribute("width"));
    }

    [Fact]
    public void Every_limit_that_is_known_has_its_mark_its_words_and_its_load()
    {
        var picture = Draw(WheelNut with
        {
            Engaged = Length.FromMillimeters(8),
            PartTensile = Pressure.FromMegapascals(300),
            BearingLimit = Pressure.FromMegapascals(490),
        });

        var key = string.Join('\n', picture.FindAll(".clamp-key li").Select(line => line.TextContent.Trim()));
        foreach (var words in new[] { "ends of the permitted range: ", "proof load of the bolt: 73 kN", "the face under the head or nut gives: ", "the thread strips: ", "yield while tightening" })
        {
            Assert.Contains(words, key, StringComparison.Ordinal);
        }

        Assert.Single(picture.FindAll(".clamp-drawing .is-bearing"));
        Assert.Single(picture.FindAll(".clamp-drawing .is-stripping"));
        Assert.Single(picture.FindAll(".clamp-drawing .clamp-yield"));
    }

    [Fact]
    public void Joint_that_another_part_limits_says_so_beside_its_band() => Assert.Contains(
        "The limit here is the wheel bearing, not the bolt", Draw(WheelNut with { LimitedBy = "the wheel bearing" }).Markup, StringComparison.Ordinal);

    [Fact]
    public void Limit_far_beyond_the_band_is_said_and_leaves_the_band_its_room()
    {
        var picture = Render<ClampBandPicture>(parameters => parameters.Add(p => p.Standing, ClampStanding.Of(WheelNut with { Permitted = null }, Nm(10))));

        Assert.Empty(picture.FindAll(".clamp-drawing .is-proof"));
        Assert.Contains("proof load of the bolt: 73 kN, beyond the end of the line", picture.Find(".clamp-key").TextContent, StringComparison.Ordinal);
    }

    private static double At(IElement mark, string side) =>
        double.Parse(mark.GetAttribute(side)!.TrimEnd('%'), CultureInfo.InvariantCulture);

    private static EnteredTorque Nm(decimal value) => new(value, TorqueUnit.NewtonMetre);

    private IRenderedComponent<ClampBandPicture> Draw(TorqueSpecification specification, params ThreadCondition[] others) =>
        Render<ClampBandPicture>(parameters => parameters.Add(picture => picture.Standing, ClampStanding.Of(specification, Nm(110), others)));
}
