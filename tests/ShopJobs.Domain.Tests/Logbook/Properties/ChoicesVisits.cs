using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Logbook.Properties;

// Coming in, moving, leaving.
internal static partial class Choices
{
    private static readonly string[] PlacesOfTheShop = ["LiftA", "LiftB", "Floor"];

    private static Command Visit(CarAtWork car, Move move)
    {
        var (from, to) = (PlacesOfTheShop[move.B % 2 * 2], move.C % 9 == 8 ? "Booth" : PlacesOfTheShop[move.C % 3]);
        OdometerReading? read = move.B % 5 == 0 ? null : new OdometerReading((car.State.Odometer ?? 1000) + (move.B % 7 == 0 ? -20 : move.C % 3 * 60), DistanceUnit.Kilometre);
        ContentDigest? why = move.C % 4 == 0 ? CarAtWork.Reason : null;
        var way = move.B % 2 == 0 ? WayOut.Driven : WayOut.OnTrailer;
        return (move.A % 8) switch
        {
            < 2 => new ComeIn(read, to, CarAtWork.Reason) { OdometerWhy = why },
            2 => new MoveCar(from, to),
            3 => new ReportMoved(from, to, CarAtWork.Reason),
            4 => new LookOver(CarAtWork.Reason, CarAtWork.Shown),
            5 or 6 => new LetGo(way, CarAtWork.Reason, read) { OdometerWhy = why },
            _ => new ReportGone(way, CarAtWork.Reason, read, CarAtWork.Reason) { OdometerWhy = why },
        };
    }

    /// <summary>A new interval for the joints whose re-torque is due; for any joint where none is.</summary>
    public static ExtendReTorque Interval(CarAtWork car, Move move)
    {
        var due = car.State.Positions.Keys.Where(at => car.State.Of(at).Last is not null && car.State.OwesReTorque(car.State.Of(at)))
            .OrderBy(at => at.ToString(), StringComparer.Ordinal).ToList();
        return new ExtendReTorque(
            due.Count > 0 ? due : [Position(car, move.A)],
            move.B % 9 == 0 ? null : new OdometerReading((car.State.Odometer ?? 1000) + (move.B % 4 * 20), DistanceUnit.Kilometre),
            CarAtWork.Reason,
            CarAtWork.Shown);
    }
}
