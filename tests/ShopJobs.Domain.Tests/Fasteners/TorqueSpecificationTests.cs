using FluentValidation;
using FluentValidation.Results;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

/// <summary>Specifications are invented; the computed figures behind the cautions are own computation.</summary>
public class TorqueSpecificationTests
{
    private static readonly TorqueSpecification WheelNut = new()
    {
        Thread = ThreadSize.Parse("M12x1.5"),
        Class = StrengthClass.Parse("10.9"),
        Seat = new FlatSeat(Length.FromMillimeters(19), Length.FromMillimeters(13.5)),
        Condition = ThreadCondition.Dry,
        Permitted = Range("105", "115"),
        Target = EnteredTorque.Parse("110"),
        Risk = RiskClass.A,
    };

    private static readonly TorqueSpecification Flange = WheelNut with
    {
        Thread = ThreadSize.Parse("M8"),
        Class = StrengthClass.Parse("8.8"),
        Seat = new FlatSeat(Length.FromMillimeters(11.6), Length.FromMillimeters(9)),
        Permitted = Range("21", "25"),
        Target = EnteredTorque.Parse("24"),
    };

    private static readonly TorqueSpecification WheelStud = WheelNut with
    {
        Class = StrengthClass.Parse("12.9"),
        ClassIsEquivalent = true,
        Condition = ThreadCondition.PreAppliedLocker,
        Permitted = Range("60", "95"),
        Target = EnteredTorque.Parse("73"),
        Jam = EnteredTorque.Parse("90"),
    };

    [Fact]
    public void A_plain_wheel_nut_has_neither_errors_nor_cautions() => Assert.Empty(Validate(WheelNut));

    [Fact]
    public void The_wheel_stud_can_be_published_with_its_cautions()
    {
        var failures = Validate(WheelStud);

        Assert.All(failures, f => Assert.Equal(Severity.Warning, f.Severity));
        Assert.Equal(["pair-creep", "range-wide", "utilisation-low"], failures.Select(f => f.ErrorCode).Order(StringComparer.Ordinal));
        Assert.Contains("±23 %", Message(failures, "range-wide"), StringComparison.Ordinal);
        Assert.Contains("Choose a target", Message(failures, "range-wide"), StringComparison.Ordinal);
        Assert.Contains("may creep from 69 N·m at low friction (0.08;", Message(failures, "pair-creep"), StringComparison.Ordinal);
        Assert.Contains("Watch the line", Message(failures, "pair-creep"), StringComparison.Ordinal);
        Assert.Contains("class by equivalence only", Message(failures, "utilisation-low"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_torque_without_a_stated_condition_cannot_be_published() =>
        Assert.Contains("as the instruction says", Error(WheelNut with { Condition = null }, "condition-missing", "Condition"), StringComparison.Ordinal);

    [Fact]
    public void A_missing_range_and_a_zero_range_cannot_be_published()
    {
        Error(WheelNut with { Permitted = null }, "permitted-missing", "Permitted");
        Error(WheelNut with { Permitted = Range("0", "115") }, "permitted-zero", "Permitted");
    }

    [Theory]
    [InlineData("104.9", "104.9 N·m is below the permitted 105 to 115 N·m")]
    [InlineData("115.1", "115.1 N·m is above the permitted 105 to 115 N·m")]
    public void A_target_outside_the_range_cannot_be_published(string target, string words) => Assert.Contains(
        words, Error(WheelNut with { Target = EnteredTorque.Parse(target) }, "target-outside", "Target"), StringComparison.Ordinal);

    [Fact]
    public void A_range_needs_a_target_and_one_stated_value_does_not()
    {
        Error(WheelNut with { Target = null }, "target-missing", "Target");
        Assert.DoesNotContain(Validate(WheelNut with { Target = null, Permitted = Range("110", "110") }), f => f.Severity == Severity.Error);
    }

    [Fact]
    public void A_target_above_what_the_jammed_nuts_take_cannot_be_published() => Assert.Contains(
        "84 N·m is above 83.0 N·m", Error(WheelStud with { Target = EnteredTorque.Parse("84") }, "target-above-jam", "Target"), StringComparison.Ordinal);

    [Fact]
    public void One_stated_value_above_what_the_jammed_nuts_take_cannot_be_published() =>
        Error(WheelStud with { Target = null, Permitted = Range("90", "90") }, "target-above-jam", "Target");

    [Fact]
    public void A_jam_torque_that_leaves_no_safe_target_cannot_be_published() => Assert.Contains(
        "64 N·m leaves no safe target in 60 to 95 N·m", Error(WheelStud with { Jam = EnteredTorque.Parse("64") }, "jam-too-low", "Jam"), StringComparison.Ordinal);

    [Fact]
    public void A_band_above_proof_load_is_a_caution_with_its_figures() => Assert.Contains(
        "at 24 N·m dry the top of the band is 104 %, oiled 125 %, of proof load", Caution(Flange, "band-over-proof", "Target"), StringComparison.Ordinal);

    [Fact]
    public void Tension_and_torsion_above_yield_are_a_caution_with_their_figures() => Assert.Contains(
        "at 24 N·m dry tension and torsion while tightening may reach 104 %, oiled 122 %, of yield",
        Caution(Flange, "band-over-yield", "Target"), StringComparison.Ordinal);

    [Fact]
    public void A_stainless_bolt_is_judged_by_its_yield()
    {
        var stainless = Flange with { Class = StrengthClass.Parse("A2-70") };

        Caution(stainless, "band-over-yield", "Target");
        Assert.DoesNotContain(Validate(stainless), f => f.ErrorCode is "class-unknown" or "band-over-proof");
    }

    [Fact]
    public void A_weaker_nut_is_a_caution() => Assert.Contains(
        "carries bolts up to 8.8", Caution(WheelNut with { Nut = NutClass.Parse("8") }, "nut-weaker", "Nut"), StringComparison.Ordinal);

    [Fact]
    public void A_short_thread_in_soft_metal_is_a_caution_with_the_length_needed()
    {
        var soft = WheelNut with { Engaged = Length.FromMillimeters(10), PartTensile = Pressure.FromMegapascals(240) };

        Assert.Contains("10 mm, below the", Caution(soft, "engagement-short", "Engaged"), StringComparison.Ordinal);
        Assert.Contains("stripping of 10 mm of engaged thread", Caution(soft, "may-strip", "Engaged"), StringComparison.Ordinal);
        Assert.DoesNotContain(Validate(soft with { Engaged = Length.FromMillimeters(40) }), f => f.ErrorCode is "engagement-short" or "may-strip");
    }

    [Fact]
    public void A_face_that_may_give_is_a_caution() =>
        Caution(Flange with { BearingLimit = Pressure.FromMegapascals(490) }, "face-may-give", "BearingLimit");

    [Fact]
    public void Run_down_torque_not_stated_is_a_caution_with_both_ends()
    {
        var locking = WheelNut with { RunDownTorque = new(EnteredTorque.Parse("2"), EnteredTorque.Parse("8")) };

        Assert.Contains("from 97 N·m to 115 N·m of it clamps", Caution(locking, "run-down-not-stated", "RunDown"), StringComparison.Ordinal);
        Assert.DoesNotContain(Validate(locking with { RunDown = RunDown.Add }), f => f.ErrorCode == "run-down-not-stated");
    }

    [Fact]
    public void A_jam_that_overloads_the_stud_between_the_nuts_is_a_caution() =>
        Caution(WheelStud with { Class = StrengthClass.Parse("8.8"), ClassIsEquivalent = false }, "stud-between-nuts", "Jam");

    [Fact]
    public void Cautions_never_move_a_number_and_are_never_errors()
    {
        var before = Flange with { };
        Assert.All(Validate(Flange), f => Assert.Equal(Severity.Warning, f.Severity));
        Assert.Equal(before, Flange);
    }

    [Fact]
    public void A_torque_far_below_proof_load_names_what_else_may_limit() => Assert.Contains(
        "such as a bearing",
        Caution(
            WheelNut with
            {
                Thread = ThreadSize.Parse("M24x1.5"),
                Class = StrengthClass.Parse("8.8"),
                Seat = new FlatSeat(Length.FromMillimeters(33), Length.FromMillimeters(25)),
            },
            "utilisation-low",
            "Target"),
        StringComparison.Ordinal);

    [Fact]
    public void A_torque_in_the_wrong_unit_stands_out_by_its_utilisation() => Caution(
        WheelNut with { Target = EnteredTorque.Parse("110 ft-lb"), Permitted = Range("105 ft-lb", "115 ft-lb"), Class = StrengthClass.Parse("8.8") },
        "utilisation-high", "Target");

    [Fact]
    public void A_target_at_the_edge_is_a_caution_about_the_tool() =>
        Assert.Contains("4 %", Caution(WheelNut with { Target = EnteredTorque.Parse("115") }, "target-guard", "Target"), StringComparison.Ordinal);

    [Fact]
    public void A_seat_not_given_says_why_there_is_no_band() => Assert.Contains(
        "band not computed for this: no seat is given", Caution(WheelNut with { Seat = null }, "band-not-computed", "Seat"), StringComparison.Ordinal);

    [Fact]
    public void A_missing_or_unfitting_class_is_a_caution()
    {
        Caution(WheelNut with { Class = null }, "class-unknown", "Class");
        Assert.Contains(
            "SAE 8 has no proof load for M12x1.5",
            Caution(WheelNut with { Class = StrengthClass.Parse("SAE 8") }, "class-unknown", "Class"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Creep_of_an_unknown_nut_says_what_to_enter() => Caution(
        WheelStud with { Thread = ThreadSize.Parse("1/2-20 UNF"), Class = StrengthClass.Parse("SAE 8") }, "creep-not-computed", "Jam");

    [Fact]
    public void A_high_jam_torque_raises_no_creep_caution() =>
        Assert.DoesNotContain(Validate(WheelStud with { Jam = EnteredTorque.Parse("130") }), f => f.ErrorCode == "pair-creep");

    private static TorqueRange Range(string minimum, string maximum) => new(EnteredTorque.Parse(minimum), EnteredTorque.Parse(maximum));

    private static List<ValidationFailure> Validate(TorqueSpecification specification) => new TorqueSpecificationValidator().Validate(specification).Errors;

    private static string Message(List<ValidationFailure> failures, string code) => Assert.Single(failures, f => f.ErrorCode == code).ErrorMessage;

    private static string Error(TorqueSpecification specification, string code, string field) => Only(specification, code, field, Severity.Error);

    private static string Caution(TorqueSpecification specification, string code, string field) => Only(specification, code, field, Severity.Warning);

    private static string Only(TorqueSpecification specification, string code, string field, Severity severity)
    {
        var failure = Assert.Single(Validate(specification), f => f.ErrorCode == code);
        Assert.Equal(severity, failure.Severity);
        Assert.Equal(field, failure.PropertyName);
        return failure.ErrorMessage;
    }
}
