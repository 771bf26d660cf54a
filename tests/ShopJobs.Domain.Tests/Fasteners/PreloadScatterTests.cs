using CsCheck;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Tests.Reference.Statements;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Fasteners;

public class PreloadScatterTests
{
    private static readonly int[] Thirty =
    [
        7760, 4010, 3587, 4635, 4920, 3797, 4462, 4940, 6220, 4780, 7229, 4310, 3900, 4322, 4475, 3812, 4132, 4219, 6100, 4685,
        6080, 4291, 3054, 4804, 3910, 3303, 4090, 4550, 6062, 5180,
    ];

    /// <summary>NASA-STD-5020B (2021-08-06) appendix A.2: mean 4721 lbf, standard deviation 1097 lbf, factor 2.145, scatter 0.498, K 0.254.</summary>
    [Fact]
    public void Thirty_bolts_at_450_pound_inches_scatter_as_NASA_prints()
    {
        var sample = new PreloadSample(Thirty.Select(f => Force.FromPoundsForce(f)));

        Assert.Equal(4721, sample.Mean.PoundsForce, 0.5);
        Assert.Equal(1097, sample.StandardDeviation.PoundsForce, 0.5);
        Assert.Equal(2.145, ToleranceFactor.NinetyOfAllWith95Confidence(30), 0.0005);
        Assert.Equal(0.498, sample.Scatter, 0.0005);
        Assert.Equal(0.644, PreloadSample.Variation(sample.Greatest, sample.Mean), 0.0005);
        Assert.Equal(0.254, ClampLoad.NutFactor(Torque.FromPoundForceInches(450), Length.FromInches(0.375), sample.Mean), 0.0005);
    }

    /// <summary>NASA TM-106943 (Dec 1995) Table I, 1/4-28: 1436 lbf; taking 5 % off the initial preload instead gives 1433.</summary>
    [Fact]
    public void Relaxation_is_reckoned_from_the_least_preload()
    {
        var window = PreloadWindow.Around(Force.FromPoundsForce(2011.1), 0.25, 0.05);

        Assert.Equal(1436, window.Least.PoundsForce, 1.0);
        Assert.Equal(2514, window.Greatest.PoundsForce, 1.0);
        Assert.Equal(0.9975, window.Nominal.PoundsForce * 0.75 * 0.95 / window.Least.PoundsForce, 0.00001);
    }

    /// <summary>VDI 2230 scatter and alpha_A: 17 % is 1.41, 23 % is 1.60, 28 % is 1.78.</summary>
    [Theory]
    [InlineData(0.17, 1.41)]
    [InlineData(0.23, 1.60)]
    [InlineData(0.28, 1.78)]
    public void Scatter_and_tightening_factor_are_one_thing(double scatter, double factor) =>
        Assert.Equal(factor, TighteningFactor.FromScatter(scatter), 0.005);

    [Fact]
    public void A_methods_band_holds_its_nominal_and_spans_its_factor() =>
        Gen.Select(Gen.Enum<TighteningMethod>(), Gen.Double[1, 200]).Sample((method, kilonewtons) =>
        {
            var nominal = Force.FromKilonewtons(kilonewtons);
            var (least, greatest) = TighteningFactor.Around(nominal, method);
            var usual = TighteningFactor.Usual(method);
            return least < nominal && nominal < greatest && usual.Low < usual.High && Math.Abs((greatest / least) - usual.High) < 1e-9;
        });

    [Fact]
    public void A_wider_torque_range_gives_a_wider_window() => Gen.Select(Gen.Double[5, 100], Gen.Double[0, 0.2], Gen.Double[0.1, 0.3]).Sample((torque, half, k) =>
    {
        var exact = PreloadWindow.ByNutFactor(Nm(torque), Nm(torque), k, Length.FromMillimeters(10), 0.3);
        var wide = PreloadWindow.ByNutFactor(Nm(torque * (1 - half)), Nm(torque * (1 + half)), k, Length.FromMillimeters(10), 0.3);
        return wide.Least <= exact.Least && exact.Least < exact.Nominal && exact.Nominal < exact.Greatest && exact.Greatest <= wide.Greatest;

        static Torque Nm(double value) => Torque.FromNewtonMeters(value);
    });

    [Fact]
    public void More_readings_leave_less_to_doubt()
    {
        Assert.True(ToleranceFactor.NinetyOfAllWith95Confidence(10) > ToleranceFactor.NinetyOfAllWith95Confidence(11));
        Assert.True(ToleranceFactor.NinetyOfAllWith95Confidence(1000) > 1.6449);
        Assert.Throws<ArgumentException>(() => new PreloadSample([Force.FromNewtons(1)]));
        Assert.Throws<ArgumentException>(() => new PreloadSample([Force.FromNewtons(1), Force.Zero]));
    }

    [Fact]
    public void Every_friction_class_is_a_band() => Assert.All(FrictionClass.All, c => Assert.True(c.Band.Low < c.Band.Nominal && c.Band.Nominal < c.Band.High));
}
