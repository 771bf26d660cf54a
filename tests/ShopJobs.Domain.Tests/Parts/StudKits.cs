using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Parts;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tests.Procedures;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Parts;

/// <summary>Invented stud kits for the stud group of the shop's wheel-stud procedure, on an invented wheel stack.</summary>
internal static class StudKits
{
    public const string Leaflet = "Quillon leaflet, rev. 3, side 1";

    /// <summary>Disc 7, wheel 14, closed cone nut of 20 mm thread and 24 mm depth; the shoulder sits on the hub.</summary>
    public static readonly WheelStack Front = new()
    {
        Name = "front",
        DiscHat = Mm(7),
        WheelPad = Mm(14),
        WheelSeat = SeatForm.Cone(60),
        NutSeat = SeatForm.Cone(60),
        NutThread = Mm(20),
        NutEnd = new NutEnd(Mm(24)),
    };

    /// <summary>M12x1.5, 12.9 marked, 42 mm, flat shoulder, 60..95 N·m with a jam of 90 N·m, pre-applied locker.</summary>
    public static readonly PartOption Q4 = new()
    {
        Id = new PartOptionId(new Guid(4, 0, 0, new byte[8])),
        Name = "Q4",
        Maker = "Quillon",
        Thread = Said(ThreadSize.Parse("M12x1.5")),
        Strength = Said(new StrengthClaim(StrengthClass.Parse("12.9"), StrengthEvidence.Marked)),
        Length = Said(Mm(42)),
        Seat = Said(SeatForm.Flat),
        Torque = Said(Range("60", "95 N·m")),
        Jam = Said(EnteredTorque.Parse("90 N·m")),
        Condition = Said(ThreadCondition.PreAppliedLocker),
        Pieces = Said(10),
        Price = Said(new Price(84.50m, "EUR")),
    };

    /// <summary>The stud group of P3 on four wheels of five, on a car with these stacks.</summary>
    public static JointToFill Joint(params IReadOnlyList<WheelStack> stacks) =>
        new(Group.Specification(), 20, OnWheel: true, stacks);

    public static JointGroup Group => Seed.Procedure("P3-wheel-studs.yaml").Value!.Group("stud");

    public static PartComparison Compare(params PartOption[] options) => PartComparison.Of(Joint(Front), options);

    public static OptionVerdict Verdict(PartOption option, params IReadOnlyList<WheelStack> stacks) =>
        PartComparison.Of(Joint(stacks), [option]).Options[0].Verdict;

    public static string Text(this PartComparison comparison, string row, int option = 0) => Cell(comparison, row, option).Text;

    public static OptionCell Cell(this PartComparison comparison, string row, int option = 0) =>
        comparison.Rows.Single(line => line.Name == row).Cells[option];

    public static Stated<T> Said<T>(T value)
        where T : notnull => new(value, Leaflet);

    public static Length Mm(double value) => Length.FromMillimeters(value);

    public static TorqueRange Range(string least, string most)
    {
        var top = EnteredTorque.Parse(most);
        return new TorqueRange(EnteredTorque.Parse(least, top.Unit), top);
    }
}
