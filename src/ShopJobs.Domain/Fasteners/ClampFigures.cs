namespace ShopJobs.Domain.Fasteners;

/// <summary>Least, nominal and greatest clamp load in newtons: the plain arithmetic of the band, without allocation.</summary>
public readonly record struct ClampFigures(double Minimum, double Nominal, double Maximum)
{
    /// <summary>
    /// Fmin = F(T (1 - w), greatest friction), nominal = F(T, nominal friction), Fmax = F(T (1 + w), least friction), the same
    /// friction in thread and seat. T in N·m; w is the tool's deviation as a fraction, 0 to below 1.
    /// </summary>
    public static ClampFigures For(
        JointGeometry joint, double torqueNewtonMetres, double deviation, double frictionLow, double frictionNominal, double frictionHigh)
    {
        var torque = torqueNewtonMetres * 1000;
        return new ClampFigures(
            torque * (1 - deviation) / joint.TorquePerForce(frictionHigh, frictionHigh),
            torque / joint.TorquePerForce(frictionNominal, frictionNominal),
            torque * (1 + deviation) / joint.TorquePerForce(frictionLow, frictionLow));
    }
}
