namespace ShopJobs.Domain.Tests.Specification.Cycles;

/// <summary>A tool that is to be calibrated again after two pulls.</summary>
/// <param name="Pulls">Pulls since its calibration, on every car; from the third on it does not matter how many.</param>
/// <param name="Counted">The last pull on this car counted, as far as the tool is concerned.</param>
internal readonly record struct SpentTool(int Pulls, bool Counted)
{
    public const int Limit = 2;

    public SpentTool PullHere() => new(Math.Min(Pulls + 1, Limit + 1), Pulls < Limit);

    public SpentTool PullElsewhere() => this with { Pulls = Math.Min(Pulls + 1, Limit + 1) };

    public SpentTool Calibrate() => this with { Pulls = 0 };
}
