using CsCheck;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tests.Specification.Closing;

namespace ShopJobs.Domain.Tests.Specification.Product;

/// <summary>A real car that nothing speaks against, released with a closing check or without.</summary>
internal sealed class ClosedWheel : ProductCar
{
    public string? Take(Transition<ClosedCar> step)
    {
        var (kind, seen) = ClosedCar.Asked[step.ArgIndex];
        var verdict = Car.Try(Zoe, CarWork.To(kind) with
        {
            Closing = seen switch { Seen.All => ClosingCheck.All, Seen.AllButOne => [.. ClosingCheck.All.Skip(1)], _ => null },
            Driver = Zoe.Id,
            DistanceKm = 20,
        });
        return Differ(
            ($"{step} is granted", step.After.Granted, verdict is Verdict.Accepted),
            ("refused for", step.After.Granted ? null : HoldReason.ClosingCheckMissing, (verdict as Verdict.Refused)?.Reasons.Single().Reason));
    }
}
