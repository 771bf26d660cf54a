using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Revisions;

/// <summary>A remark on a step, with its procedure and who said it.</summary>
public sealed record SaidOfStep(StepRemark Row, string Code, string Revision, string By, string Car);

/// <summary>What people at the cars say is wrong about steps, and what an author answers.</summary>
public sealed class StepRemarks(IDbContextFactory<ShopDbContext> database, WhoIsHere who, ShopClock clock)
{
    /// <summary>Says that a step is wrong. Why it was not kept, or null.</summary>
    public async Task<string?> SayAsync(CarId car, string procedureDigest, string stepId, StepFault fault, string words, CancellationToken cancellation = default)
    {
        if (await who.ActingAsync(cancellation) is not { } present)
        {
            return ShopChange.Locked;
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        shop.StepRemarks.Add(new StepRemark
        {
            Id = Guid.NewGuid(),
            ProcedureDigest = procedureDigest,
            StepId = stepId,
            CarId = car,
            Fault = fault,
            Words = Cut(words),
            At = clock.Now,
            By = present.Person,
        });
        await shop.SaveChangesAsync(cancellation);
        return null;
    }

    /// <summary>An author answers: the step was put right in a newer revision, or it is right as it is.</summary>
    public async Task<string?> AnswerAsync(Guid id, string answer, CancellationToken cancellation = default)
    {
        if (await who.ActingAsync(cancellation) is not { } present || !present.May(Right.Author))
        {
            return "Answering needs the author's right.";
        }

        if (Cut(answer) is not { Length: > 0 } text)
        {
            return "Write what you answer: what the newer revision says, or why the step is right.";
        }

        await using var shop = await database.CreateDbContextAsync(cancellation);
        var answered = await shop.StepRemarks.Where(remark => remark.Id == id && remark.AnsweredAt == null).ExecuteUpdateAsync(
            rows => rows.SetProperty(row => row.Answer, text).SetProperty(row => row.AnsweredAt, clock.Now).SetProperty(row => row.AnsweredBy, present.Person), cancellation);
        return answered == 1 ? null : "Somebody answered it before you. Load the page again.";
    }

    /// <summary>What was said of a step of this procedure, in any revision, and waits; newest first.</summary>
    public async Task<IReadOnlyList<SaidOfStep>> OfStepAsync(string code, string stepId, CancellationToken cancellation = default) =>
        [.. (await WaitingAsync(cancellation)).Where(said => said.Code == code && said.Row.StepId == stepId)];

    /// <summary>All that was said of a procedure, in any revision, newest first.</summary>
    public async Task<IReadOnlyList<SaidOfStep>> OfProcedureAsync(string code, CancellationToken cancellation = default) =>
        [.. (await AllAsync(_ => true, cancellation)).Where(said => said.Code == code)];

    /// <summary>All that waits for an author, newest first.</summary>
    public Task<IReadOnlyList<SaidOfStep>> WaitingAsync(CancellationToken cancellation = default) => AllAsync(said => said.Row.AnsweredAt is null, cancellation);

    private async Task<IReadOnlyList<SaidOfStep>> AllAsync(Func<SaidOfStep, bool> which, CancellationToken cancellation)
    {
        await using var shop = await database.CreateDbContextAsync(cancellation);
        var rows = await (from remark in shop.StepRemarks.AsNoTracking()
                          join procedure in shop.Procedures on remark.ProcedureDigest equals procedure.Digest
                          join person in shop.People on remark.By equals person.Id
                          join car in shop.Cars on remark.CarId equals car.Id
                          orderby remark.At descending
                          select new SaidOfStep(remark, procedure.Code, procedure.Revision, person.Name, car.Name)).ToListAsync(cancellation);
        return [.. rows.Where(which)];
    }

    private static string Cut(string text) => Typed.Clean(text) is var clean && clean.Length > StepRemark.WordsLength ? clean[..StepRemark.WordsLength] : clean;
}
