using BenchmarkDotNet.Attributes;
using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Benchmarks;

/// <summary>
/// The clamp band of one joint, with its shares of proof load and of yield while tightening. The floor is the same arithmetic in
/// plain doubles, written down here once more without any type of the product.
/// </summary>
[MemoryDiagnoser]
public class ClampBandOfOneJoint
{
    private const double Pitch = 1.5, D2 = 11.025721, D3 = 10.159692, Arm = 8.125, Proof = 73_114, Yield = 940, Area = 88.126;
    private static readonly double D0 = (D2 + D3) / 2;
    private readonly FrictionBand friction = FrictionBand.Assumed(ThreadCondition.Dry);
    private JointFigures joint;
    private double torque;

    [GlobalSetup]
    public void Prepare()
    {
        torque = 110;
        var seat = new FlatSeat(Length.FromMillimeters(19), Length.FromMillimeters(13.5));
        if (!JointFigures.TryFor(ThreadSize.Parse("M12x1.5"), seat, StrengthClass.Parse("10.9"), out joint, out var reason))
        {
            throw new InvalidOperationException(reason);
        }

        if (joint.Band(torque, 0.04, friction) is not { Proof: not null, WhileTightening: not null })
        {
            throw new InvalidOperationException("The band has no shares: the wrong thing would be measured.");
        }
    }

    [Benchmark(Baseline = true, Description = "floor: the same in plain doubles")]
    public double Floor()
    {
        var (low, nominal, high) = (friction.Low, friction.Nominal, friction.High);
        var least = Load(torque * 0.96, high);
        var middle = Load(torque, nominal);
        var most = Load(torque * 1.04, low);
        return least + middle + most + (least / Proof) + (middle / Proof) + (most / Proof) + Share(least, high) + Share(middle, nominal) + Share(most, low);
    }

    [Benchmark(Description = "clamp band of one joint")]
    public double Band()
    {
        var band = joint.Band(torque, 0.04, friction);
        var (load, proof, yield) = (band.Load, band.Proof!.Value, band.WhileTightening!.Value);
        return load.Minimum + load.Nominal + load.Maximum + proof.Minimum + proof.Nominal + proof.Maximum + yield.Minimum + yield.Nominal + yield.Maximum;
    }

    private static double Load(double newtonMetres, double mu) =>
        newtonMetres * 1000 / ((Pitch / (2 * Math.PI)) + (0.577350269 * mu * D2) + (mu * Arm));

    private static double Share(double newtons, double mu)
    {
        var ratio = 1.5 * D2 / D0 * ((Pitch / (Math.PI * D2)) + (1.154700538 * mu));
        return newtons / Area * Math.Sqrt(1 + (3 * ratio * ratio)) / Yield;
    }
}
