using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Tools;

/// <summary>A record judged again by the tool's calibration as found; own arithmetic.</summary>
public class TorqueReviewTests
{
    private static readonly TorqueRange Wheel = new(EnteredTorque.Parse("105"), EnteredTorque.Parse("115"));

    /// <summary>Set 110 with a wrench that delivers 9 % too little: 100.1 N·m, below 105. Both signs of a certificate's percent say it.</summary>
    [Theory]
    [InlineData(PercentDefinition.Delivered, -9)]
    [InlineData(PercentDefinition.Deviation, 9.8901098901)]
    public void A_wrench_nine_percent_low_left_the_wheel_loose(PercentDefinition definition, double percent)
    {
        CalibrationPoint[] found =
            [.. new[] { 40m, 120m, 200m }.Select(set => CertificatePercent.ToPoint(set, (decimal)percent, definition))];

        var review = Assert.IsType<TorqueReview.Known>(TorqueReview.Of(EnteredTorque.Parse("110"), TorqueUnit.NewtonMetre, found, Wheel));

        Assert.Equal(100.1, (double)review.Delivered.Value, 1e-6);
        Assert.True(review.IsUnder);
        Assert.False(review.IsInside);
        Assert.Equal(-9.0m, Math.Round(found[0].DeliveredPercent, 1));
    }

    /// <summary>The same +9 read by the other convention is a wrench that delivers too much: the definition must be chosen.</summary>
    [Fact]
    public void One_percent_read_by_the_two_conventions_points_opposite_ways()
    {
        Assert.Equal(9.0m, Math.Round(CertificatePercent.ToPoint(110, 9, PercentDefinition.Delivered).DeliveredPercent, 1));
        Assert.Equal(-8.3m, Math.Round(CertificatePercent.ToPoint(110, 9, PercentDefinition.Deviation).DeliveredPercent, 1));
    }

    [Fact]
    public void A_percent_leads_back_to_itself() => Gen.Select(Gen.Decimal[1, 500], Gen.Decimal[-50, 50]).Sample((set, percent) =>
        Math.Abs(CertificatePercent.ToPoint(set, percent, PercentDefinition.Deviation).DeviationPercent - percent) < 1e-15m
        && Math.Abs(CertificatePercent.ToPoint(set, percent, PercentDefinition.Delivered).DeliveredPercent - percent) < 1e-15m);

    [Fact]
    public void Outside_the_points_nothing_is_known()
    {
        CalibrationPoint[] found = [new(40, 40), new(100, 100)];

        Assert.IsType<TorqueReview.Unknown>(TorqueReview.Of(EnteredTorque.Parse("110"), TorqueUnit.NewtonMetre, found, Wheel));
        Assert.IsType<TorqueReview.Unknown>(TorqueReview.Of(EnteredTorque.Parse("110"), TorqueUnit.NewtonMetre, [], Wheel));
    }

    [Fact]
    public void A_record_in_another_unit_is_judged_as_the_same_torque()
    {
        CalibrationPoint[] found = [new(30, 30), new(150, 150)];

        var feet = TorqueReview.Of(EnteredTorque.Parse("110"), TorqueUnit.PoundForceFoot, found, Wheel);

        Assert.True(Assert.IsType<TorqueReview.Known>(feet).IsInside);
    }

    [Fact]
    public void A_percent_that_leaves_no_torque_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CertificatePercent.ToPoint(100, -100, PercentDefinition.Delivered));
}
