using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Tests.Reference.Statements;

/// <summary>
/// Least, nominal and greatest preload of a joint by the nut factor, as NASA states it: NASA-STD-5020B,
/// Pmax = (1 + G) Tmax/(K D), Pmin = (1 - G) Tmin/(K D); relaxation by NASA TM-106943: Pmin/(1 + r), with r 5 % of Pmin.
/// </summary>
public readonly record struct PreloadWindow(Force Least, Force Nominal, Force Greatest)
{
    /// <summary>
    /// From a torque range, nut factor K (above zero), diameter D, scatter G (0 to below 1; 0.25 lubricated, 0.35 not) and relaxation
    /// (a fraction of the least preload, 0 where none is reckoned). Nominal at the middle of the range.
    /// </summary>
    public static PreloadWindow ByNutFactor(
        Torque least, Torque greatest, double nutFactor, Length diameter, double scatter, double relaxation = 0) => new(
            ClampLoad.FromTorque(nutFactor, diameter, least) * (1 - scatter) / (1 + relaxation),
            ClampLoad.FromTorque(nutFactor, diameter, (least + greatest) / 2),
            ClampLoad.FromTorque(nutFactor, diameter, greatest) * (1 + scatter));

    /// <summary>Around a nominal preload whose torque is held exactly.</summary>
    public static PreloadWindow Around(Force nominal, double scatter, double relaxation = 0) =>
        new(nominal * (1 - scatter) / (1 + relaxation), nominal, nominal * (1 + scatter));
}
