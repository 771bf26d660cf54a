using System.Globalization;
using ShopJobs.Domain.Procedures.Documents;

namespace ShopJobs.Domain.Procedures;

/// <summary>An angle that a fastener is turned on after its torque was reached, in degrees, with what is accepted, both ends inside.</summary>
/// <param name="Degrees">The angle to turn.</param>
/// <param name="Minimum">Least angle accepted.</param>
/// <param name="Maximum">Greatest angle accepted.</param>
public sealed record Turn(decimal Degrees, decimal Minimum, decimal Maximum)
{
    /// <summary>Least angle of a stage.</summary>
    public const decimal Least = 1;

    /// <summary>Greatest angle of a stage, one whole turn (common practice, no source).</summary>
    public const decimal Most = 360;

    /// <summary>Greatest angle that is taken as a record of what was turned.</summary>
    public const decimal Largest = 9_999;

    /// <summary>Minimum &lt;= degrees &lt;= maximum, exactly: no rounding and no tool tolerance.</summary>
    public bool Contains(decimal degrees) => degrees >= Minimum && degrees <= Maximum;

    /// <summary>An angle as somebody typed it, one number with comma or point, from 0 to <see cref="Largest"/>; null for anything else.</summary>
    public static decimal? Read(string? text) =>
        text is not null && Amounts.Number(text) is { } degrees and >= 0 and <= Largest ? degrees : null;

    /// <summary>For example "85 to 95°".</summary>
    public string Permitted() => string.Create(CultureInfo.InvariantCulture, $"{Minimum} to {Maximum}°");

    /// <summary>An angle as it is read out: "90°".</summary>
    public static string Amount(decimal degrees) => string.Create(CultureInfo.InvariantCulture, $"{degrees}°");

    /// <summary>For example "+90°": turned on from where the stage below left it.</summary>
    public override string ToString() => $"+{Amount(Degrees)}";
}
