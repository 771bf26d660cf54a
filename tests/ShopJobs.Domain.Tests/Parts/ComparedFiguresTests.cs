using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Parts;

namespace ShopJobs.Domain.Tests.Parts;

/// <summary>Each figure of a comparison against a calculation by hand or a printed table, named beside it. The kits are invented.</summary>
public class ComparedFiguresTests
{
    private static readonly PartComparison Q4 = StudKits.Compare(StudKits.Q4);

    [Fact] // ISO 898-1:2013 table 7, from memory: M12x1.5 has 88.1 mm² and proof loads of 73.1 kN in 10.9 and 85.5 kN in 12.9
    public void Stress_area_and_proof_load_are_those_of_the_table()
    {
        var weaker = StudKits.Q4 with { Strength = StudKits.Said(new StrengthClaim(StrengthClass.Parse("10.9"), StrengthEvidence.Tested)) };

        Assert.Equal("88.1 mm²", Q4.Text("Stress area"));
        Assert.Equal("85.5 kN", Q4.Text("Proof load"));
        Assert.Equal("73.1 kN", StudKits.Compare(weaker).Text("Proof load"));
    }

    // VDI 2230: T = F (P/2π + mu d2/(2 cos 30°) + mu Dkm/2), d2 11.0257, Dkm 15.05, by hand: 1.62780, 2.18342, 2.73904 mm at friction
    // 0.10, 0.14, 0.18; 73 N·m with 4 % of the wrench: 70.08/2.73904 = 25.6, 73/2.18342 = 33.4, 75.92/1.62780 = 46.6 kN;
    // over 970 MPa x 88.127 mm² = 85.483 kN: 30, 39, 55 %.
    [Fact]
    public void Utilisation_is_reckoned_at_the_procedures_target_where_the_instruction_permits_it()
    {
        Assert.Equal("73 N·m: this procedure's target; with pre-applied locker, as stated", Q4.Text("Reckoned at"));
        Assert.Equal("25.6 / 33.4 / 46.6 kN", Q4.Text("Clamp load, low / nominal / high"));
        Assert.Equal("30 % / 39 % / 55 %", Q4.Text("Share of proof load, low / nominal / high"));
    }

    [Fact] // By hand as above: 80 x 0.96/2.73904 = 28.0, 80/2.18342 = 36.6, 80 x 1.04/1.62780 = 51.1 kN
    public void One_stated_value_is_reckoned_with_and_no_other()
    {
        var one = StudKits.Compare(StudKits.Q4 with { Torque = StudKits.Said(StudKits.Range("80", "80 N·m")), Jam = StudKits.Said(EnteredTorque.Parse("110 N·m")) });

        Assert.StartsWith("80 N·m: the one value stated", one.Text("Reckoned at"), StringComparison.Ordinal);
        Assert.Equal("28.0 / 36.6 / 51.1 kN", one.Text("Clamp load, low / nominal / high"));
    }

    [Fact] // F6 by hand: lo 80/0.96 = 83.33, hi min(110/1.04 = 105.77, 130 x 0.96/1.04 = 120) = 105.77, middle 94.55
    public void A_range_without_the_procedures_target_is_reckoned_in_the_middle_of_its_room()
    {
        var other = StudKits.Compare(StudKits.Q4 with { Torque = StudKits.Said(StudKits.Range("80", "110 N·m")), Jam = StudKits.Said(EnteredTorque.Parse("130 N·m")) });

        Assert.StartsWith("94.6 N·m: middle of the room that its instruction leaves", other.Text("Reckoned at"), StringComparison.Ordinal);
    }

    [Fact] // Own arithmetic: 42 - 7 - 14 = 21 mm reach the nut; its 20 mm engage, 20/1.5 = 13.3 turns; 24 - 21 = 3 mm are left
    public void Length_fit_is_that_of_the_cars_stack()
    {
        Assert.Equal("20 mm, 13.3 turns", Q4.Text("Thread engaged in the nut, front"));
        Assert.Equal("3 mm room in the closed nut", Q4.Text("End of the stud in the nut, front"));
    }

    [Fact] // Own arithmetic: 21 - 20 = 1 mm shows beyond an open nut of 20 mm, 1/1.5 = 0.7 threads
    public void An_open_nut_shows_threads() => Assert.Equal(
        "0.7 threads show",
        PartComparison.Of(StudKits.Joint(StudKits.Front with { NutEnd = default }), [StudKits.Q4]).Text("End of the stud in the nut, front"));

    // FED-STD-H28 with the limits of ISO 965-2 (from memory) for M12x1.5: Es min 10.854, Kn max 10.676 mm; by hand
    // π/1.5 x 20 x 10.676 x (0.75 + 0.57735 x 0.178) = 381.4 mm²; x 0.6 x 1220 MPa = 279.2 kN
    [Fact]
    public void The_engaged_thread_strips_where_the_handbook_says() =>
        Assert.Equal("279.2 kN", Q4.Text("Engaged thread of the stud strips at, front"));

    [Fact] // 20 studs in kits of 10: 2 x 84.50 = 169.00; 8.45 a stud over (85.483 - 46.640) kN = 0.2175
    public void Prices_are_for_whole_kits_and_for_a_piece()
    {
        Assert.Equal("169.00 EUR: 2 kits for 20", Q4.Text("Price for this job"));
        Assert.Equal("0.22 EUR", Q4.Text("Price per kN of margin, each"));
        Assert.Equal("253.50 EUR: 3 kits for 20", StudKits.Compare(StudKits.Q4 with { Pieces = StudKits.Said(9) }).Text("Price for this job"));
    }

    [Fact]
    public void Every_stated_value_shows_the_line_it_was_read_from()
    {
        var given = Q4.Rows.Select(row => row.Cells[0]).OfType<OptionCell.Given>().ToList();

        Assert.Equal(9, given.Count);
        Assert.All(given, cell => Assert.Equal(StudKits.Leaflet, cell.Source));
    }

    [Fact] // 21 of 24 mm of the closed nut are taken, 88 %; proof 55 %, thread needed 12 of 20 = 60 %
    public void The_worst_number_is_the_one_nearest_to_its_limit()
    {
        var tightest = Q4.Options[0].Tightest!;

        Assert.Equal(("End of the stud in the nut, front", "88 %"), (tightest.Row, tightest.Words));
    }

    [Fact]
    public void A_stud_that_reaches_no_nut_is_over_every_limit()
    {
        var tightest = StudKits.Compare(StudKits.Q4 with { Length = StudKits.Said(StudKits.Mm(20)) }).Options[0].Tightest!;

        Assert.Equal(("Thread engaged in the nut, front", "over 999 %"), (tightest.Row, tightest.Words));
    }
}
