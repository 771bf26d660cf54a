using Bunit;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Web.Components.Step;
using UnitsNet;

namespace ShopJobs.Web.Tests.Step;

public sealed class ClampBandViewTests : BunitContext
{
    private static readonly Stage At110 = TestProcedures.Stage(1, 110, 105, 115, [1]);

    [Fact]
    public void Joint_without_a_seat_says_that_its_band_is_not_computed_and_why()
    {
        var view = Draw(TestProcedures.Group("nuts", TestRegister.Nut));

        Assert.Equal("Band not computed for this: no seat is given.", view.Find(".band-words").TextContent);
        Assert.Empty(view.FindAll("svg"));
    }

    [Fact]
    public void Band_stands_against_the_proof_load()
    {
        var view = Draw(TestProcedures.Group("nuts", TestRegister.Nut) with
        {
            Class = StrengthClass.Parse("10.9"),
            Seat = new FlatSeat(Length.FromMillimeters(19), Length.FromMillimeters(13.5)),
        });

        // 110 N·m on M12x1.5 with Dm (19+13.5)/2, a tool of 4 % and mu 0.18/0.14/0.10 by the long form of VDI 2230; proof load of
        // class 10.9 is 830 MPa x 88.1 mm2 = 73.1 kN (ISO 898-1 figures as reprinted).
        Assert.Equal("37 / 49 / 68 kN, 51 % to 93 % of proof load 73 kN", view.Find(".band-words").TextContent);
        var proof = double.Parse(view.Find(".band-proof").GetAttribute("x1")!, System.Globalization.CultureInfo.InvariantCulture);
        var span = view.Find(".band-span");
        var end = double.Parse(span.GetAttribute("x")!, System.Globalization.CultureInfo.InvariantCulture)
            + double.Parse(span.GetAttribute("width")!, System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange(end, 1, proof);
    }

    [Fact]
    public void Joint_that_another_part_limits_says_so_beside_its_band()
    {
        var view = Draw(TestProcedures.Group("nuts", TestRegister.Nut) with
        {
            Class = StrengthClass.Parse("10.9"),
            Seat = new FlatSeat(Length.FromMillimeters(19), Length.FromMillimeters(13.5)),
            LimitedBy = "the wheel bearing",
        });

        Assert.Contains("The limit here is the wheel bearing, not the bolt", view.Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<ClampBandView> Draw(JointGroup group) => Render<ClampBandView>(parameters => parameters
        .Add(view => view.Group, group)
        .Add(view => view.Stage, At110));
}
