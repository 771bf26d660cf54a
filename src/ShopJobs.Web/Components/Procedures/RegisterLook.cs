using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>What a new register changes, in words.</summary>
/// <param name="Mark">Digest of the register and of these words: what was looked at is what is taken.</param>
/// <param name="Kinds">What differs in the register.</param>
/// <param name="Cars">Which running jobs and cars it touches.</param>
/// <param name="TakesAway">Cars of the shop would have fewer joints: the lead takes it in, with a second person who looked.</param>
public sealed record RegisterEffect(string Mark, IReadOnlyList<string> Kinds, IReadOnlyList<string> Cars, bool TakesAway);

/// <summary>Looks at a new joint register before it is taken in.</summary>
public sealed class RegisterLook(IDbContextFactory<ShopDbContext> database, CarDesk desk)
{
    /// <summary>What the register of a batch changes; null where there is none, the batch has errors, or nothing changes.</summary>
    public async Task<RegisterEffect?> AtAsync(IReadOnlyList<DocumentFile> files, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(files);
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var batch = await ImportBatch.ReadAsync(shop, files, cancellation);
        if (!batch.IsSound || batch.InForce is not { } before || batch.NewRegister is not { Register.Value: { } after } read)
        {
            return null;
        }

        var kinds = RegisterWords.Of(before, after).ToList();
        if (RegisterChanges.OtherThanKinds(before, after))
        {
            kinds.Add("The car's conditions, the settings or the results are written anew.");
        }

        if (kinds.Count == 0)
        {
            return null;
        }

        var cars = await shop.Cars.AsNoTracking().OrderBy(car => car.Name).ToListAsync(cancellation);
        var touched = cars.Zip(desk.ReadAll(cars.Select(car => car.Id), null)).SelectMany(car => Touched(car.First, car.Second, RegisterChanges.Between(before.For(car.Second.State.Joints), after.For(car.Second.State.Joints)))).ToList();
        var mark = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', [read.Digest, .. kinds, .. touched])));
        return new RegisterEffect(Convert.ToHexStringLower(mark), kinds, touched, batch.TakesAway);
    }

    private static IEnumerable<string> Touched(Car car, CarReading reading, IReadOnlyList<KindChange> changes)
    {
        foreach (var job in reading.State.RunningJobs)
        {
            var placed = reading.Placed(job);
            var keys = placed.Groups.Select(group => group.Group.Key).Concat(placed.Steps.SelectMany(step => step.Step.Opens)).ToHashSet();
            if (changes.Where(change => keys.Contains(change.Kind.Key)).Select(change => change.Kind.Name).ToList() is { Count: > 0 } names)
            {
                yield return $"{car.Name}, {placed.Procedure.Code} {placed.Procedure.Title}: running, works on {string.Join(", ", names)}. It keeps the register it was started with.";
            }
        }

        var lost = changes.SelectMany(change => change.Lost).Where(position => !reading.State.Of(position).IsAsFound).GroupBy(position => position.Joint);
        foreach (var joint in lost)
        {
            yield return $"{car.Name}: {reading.Now.Name(joint.Key)} was worked on and is in the new register no more. It stays in every release of this car.";
        }
    }
}
