using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.JobEnds;
using ShopJobs.Web.Components.Revisions;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.MyWork;

/// <summary>Gathers one person's work over every car of the shop.</summary>
public sealed class MyWorkDesk(IDbContextFactory<ShopDbContext> database, CarDesk desk, WhoIsHere who, JobStates states, StepRemarks remarks)
{
    /// <summary>The person's work now; null when nobody is signed in.</summary>
    public async Task<MyWorkScene?> SceneAsync(CancellationToken cancellation = default)
    {
        if (await who.LookingAsync(cancellation) is not { } here)
        {
            return null;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var cars = await shop.Cars.AsNoTracking().Where(car => car.RetiredAt == null).ToListAsync(cancellation);
        var assigned = await shop.Assignments.AsNoTracking().Where(row => row.To == null).ToListAsync(cancellation);
        var places = cars.ToDictionary(car => car.Id);
        var readings = desk.ReadAll(places.Keys, here.Person, here.Session);
        var scene = MyWorkScene.Of(here, readings, places, assigned, await states.OfAsync(readings.Select(reading => reading.State)));
        return scene with
        {
            Remarks = !here.May(Right.Author) ? [] : [.. (await remarks.WaitingAsync(cancellation)).Select(said => new DecisionItem(
                $"{said.Code} step {said.Row.StepId}. {said.Said()}", "Answer", $"/procedures/{said.Row.ProcedureDigest}#said"))],
        };
    }
}
