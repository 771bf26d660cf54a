using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Above;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>One step of a job with its instances: one for each column it is done at, or the one of the whole car.</summary>
/// <param name="Cells">By column; a single one where it is done once for the car.</param>
public sealed record StepRow(Domain.Procedures.Step Step, IReadOnlyList<StepInstance?> Cells)
{
    /// <summary>True where it is done once for the car.</summary>
    public bool IsOfCar => Step.Per == StepPer.Car;

    /// <summary>The columns of a job: the places of its steps, the four corners first and in their order.</summary>
    public static IReadOnlyList<string> Columns(PlacedProcedure placed)
    {
        ArgumentNullException.ThrowIfNull(placed);
        return [.. placed.Steps.Select(step => step.Place).OfType<string>().Distinct().OrderBy(place => CarAreas.Of(place) is { } area && area.IsCorner() ? area : (CarArea?)CarArea.Rear + 1)];
    }

    /// <summary>The rows of a job in working order.</summary>
    public static IReadOnlyList<StepRow> Of(PlacedProcedure placed)
    {
        ArgumentNullException.ThrowIfNull(placed);
        var columns = Columns(placed);
        return
        [
            .. placed.Steps.GroupBy(instance => instance.Step).Select(row => new StepRow(
                row.Key,
                row.Key.Per == StepPer.Car ? [row.Single()] : [.. columns.Select(place => row.FirstOrDefault(instance => instance.Place == place))])),
        ];
    }

    /// <summary>A column's head: "FL" for a corner, else the place's own word.</summary>
    public static string Head(string place) => CarAreas.Of(place) switch
    {
        CarArea.FrontLeft => "FL",
        CarArea.FrontRight => "FR",
        CarArea.RearLeft => "RL",
        CarArea.RearRight => "RR",
        _ => place,
    };
}
