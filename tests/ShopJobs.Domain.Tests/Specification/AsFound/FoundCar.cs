namespace ShopJobs.Domain.Tests.Specification.AsFound;

/// <summary>What is written down of how a system was found.</summary>
internal enum Known
{
    Nothing,
    Seen,
    Unknown,
}

/// <summary>One system of a car that came in, with one nut of it.</summary>
/// <param name="Opened">The nut was opened in this visit.</param>
/// <param name="IsOpen">The nut is open now.</param>
/// <param name="Lost">It was opened while nothing was written down.</param>
/// <param name="MayBegin">What was last answered to whoever asked to begin its step.</param>
/// <param name="Counts">The last pull counted.</param>
internal readonly record struct FoundCar(Known Known, bool Opened, bool IsOpen, bool Lost, bool? MayBegin, bool? Counts)
{
    public static FoundCar Start => default;

    public FoundCar WriteDown(Known known) => Asked() with { Known = known };

    public FoundCar Ask() => Asked() with { MayBegin = Known != Known.Nothing || Opened || IsOpen };

    public FoundCar Open() => Asked() with { Opened = true, IsOpen = true, Lost = Lost || Known == Known.Nothing };

    public FoundCar Close() => Asked() with { IsOpen = false, Counts = true };

    public FoundCar ComeAgain() => new() { IsOpen = IsOpen };

    private FoundCar Asked() => this with { MayBegin = null, Counts = null };
}
