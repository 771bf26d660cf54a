namespace ShopJobs.Domain.Logbook;

/// <summary>Photographs of a car in plain words.</summary>
public static class PhotoWords
{
    /// <summary>The eight views, going round the car.</summary>
    public static IReadOnlyList<CarView> Views { get; } = Enum.GetValues<CarView>();

    /// <summary>A view by its name: "front", "rear left".</summary>
    public static string Of(CarView view) => view switch
    {
        CarView.Front => "front",
        CarView.FrontRight => "front right",
        CarView.Right => "right side",
        CarView.RearRight => "rear right",
        CarView.Rear => "rear",
        CarView.RearLeft => "rear left",
        CarView.Left => "left side",
        CarView.FrontLeft => "front left",
        _ => throw new ArgumentOutOfRangeException(nameof(view), view, "Not a view of a car."),
    };

    /// <summary>How many of the views are photographed: "5 of 8".</summary>
    public static string Count(CarState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return FormattableString.Invariant($"{state.PhotosByView.Count} of {Views.Count}");
    }

    internal static string Of(PhotoTaken fact) => fact.View is { } view ? $"Photographed the car: {Of(view)}." : "Took a photograph.";
}
