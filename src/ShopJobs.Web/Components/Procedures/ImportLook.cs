using System.Security.Cryptography;
using System.Text;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Components.Revisions;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>What a batch of documents changes for jobs and cars, in words.</summary>
/// <param name="Mark">Digest of the register and of these words: what was looked at is what is taken.</param>
/// <param name="Kinds">What differs in the register.</param>
/// <param name="Cars">Which running jobs and cars it touches.</param>
/// <param name="Revisions">Which running jobs and released cars have records under an older revision of a procedure of the batch.</param>
/// <param name="TakesAway">Cars of the shop would have fewer joints: the lead takes it in, with a second person who looked.</param>
public sealed record ImportEffect(string Mark, IReadOnlyList<string> Kinds, IReadOnlyList<string> Cars, IReadOnlyList<string> Revisions, bool TakesAway);

/// <summary>Looks at a new joint register and at newer revisions of procedures before they are taken in.</summary>
public sealed class ImportLook(IDbContextFactory<ShopDbContext> database, CarDesk desk)
{
    /// <summary>What a batch changes; null where it has errors, or changes nothing for the register, for a running job or a released car.</summary>
    public async Task<ImportEffect?> AtAsync(IReadOnlyList<DocumentFile> files, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(files);
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var batch = await ImportBatch.ReadAsync(shop, files, cancellation);
        if (!batch.IsSound || batch.InForce is not { } before)
        {
            return null;
        }

        var after = batch.NewRegister?.Register?.Value ?? before;
        var kinds = RegisterWords.Of(before, after).ToList();
        if (RegisterChanges.OtherThanKinds(before, after))
        {
            kinds.Add("The car's conditions, the settings or the results change.");
        }

        var cars = await shop.Cars.AsNoTracking().OrderBy(car => car.Name).ToListAsync(cancellation);
        var read = cars.Zip(desk.ReadAll(cars.Select(car => car.Id), null)).ToList();
        var touched = kinds.Count == 0 ? [] : read.SelectMany(car => Touched(car.First, car.Second, RegisterChanges.Between(before.For(car.Second.State.Joints), after.For(car.Second.State.Joints)))).ToList();
        var revisions = batch.NewProcedures.SelectMany(document => read.SelectMany(car => Revised(car.First, car.Second, document, after))).ToList();
        if (kinds.Count + revisions.Count == 0)
        {
            return null;
        }

        var digests = files.Select(file => DocumentDigest.Of(file.Bytes));
        var mark = SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', [.. digests, .. kinds, .. touched, .. revisions])));
        return new ImportEffect(Convert.ToHexStringLower(mark), kinds, touched, revisions, batch.TakesAway);
    }

    // Running jobs by an older revision, and jobs of a car that is released whose records the newer one would not take.
    private static IEnumerable<string> Revised(Car car, CarReading reading, ImportBatch.ReadDocument document, JointRegister after)
    {
        var procedure = document.Procedure!.Value!;
        var ofCar = after.For(reading.State.Joints);
        var isReleased = reading.State.Releases.Values.Any(release => release.Fact.Kind != ReleaseKind.Move && release.VoidBy == 0 && release.Withdrawn is null);
        foreach (var job in reading.State.Jobs.Values.Where(job => job.Fact.Procedure == procedure.Code && job.Fact.ProcedureDigest != document.Digest).OrderBy(job => job.Number))
        {
            var fits = procedure.IsFor(reading.State.Joints.Follows) && PlacedProcedure.Misfits(procedure, ofCar, job.Fact.Places).Count == 0;
            if (!fits && job.IsRunning)
            {
                yield return $"{car.Name}, {procedure.Code} revision {job.Fact.Revision}, running: revision {procedure.Revision} does not fit this car. The job goes on as it is.";
            }
            else if (fits && (job.IsRunning || isReleased)
                && RevisionEffect.Of(reading.State, reading.Now, job, new PlacedProcedure(procedure, ofCar, [.. job.Fact.Places])) is var effect
                && (job.IsRunning || effect.Pulls.Any(pull => pull.Match != RevisionMatch.Passes)))
            {
                yield return $"{car.Name}, {procedure.Code} revision {job.Fact.Revision}, {(job.IsRunning ? "running" : "released")}: under revision {procedure.Revision}: {RevisionLines.Short(effect)}.";
            }
        }
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
