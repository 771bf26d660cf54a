using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Tests.Shop;

namespace ShopJobs.Web.Tests.Procedures;

public sealed class ProcedureImportTests : IAsyncLifetime
{
    private ShopOnDisk shop = null!;

    private ProcedureImport Import => shop.Get<ProcedureImport>();

    private ProcedureShelf Shelf => shop.Get<ProcedureShelf>();

    public async Task InitializeAsync()
    {
        shop = await ShopOnDisk.OpenAsync();
        await shop.RowsAsync(async rows => await rows.Procedures.ExecuteDeleteAsync() + await rows.JointRegisters.ExecuteDeleteAsync());
    }

    public Task DisposeAsync()
    {
        shop.Dispose();
        return Task.CompletedTask;
    }

    [Fact]
    public async Task The_seed_goes_in_as_one_batch_and_comes_off_the_shelf_whole()
    {
        var report = await Import.ImportAsync(SeedDocuments.All, by: null);

        Assert.True(report.IsTaken, string.Join("\n", report.Documents.SelectMany(document => document.Problems)));
        Assert.All(report.Documents, document => Assert.Equal(DocumentFate.Stored, document.Fate));
        var register = Shelf.CurrentRegister()!;
        var current = await Shelf.CurrentAsync();
        Assert.Equal(["P3", "P5"], current.Select(shelved => shelved.Row.Code).Where(code => code is "P3" or "P5"));
        Assert.All(current, shelved => Assert.True(shelved.Row.Demo));
        var wheel = current.Single(shelved => shelved.Row.Code == "P5");
        Assert.Equal("wheel.nut", AsTaken(wheel.Row.Digest, register.Digest).Group("wheel-nuts").Key);
    }

    [Fact]
    public async Task The_same_bytes_again_are_a_named_no_op()
    {
        await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], by: null);
        var before = await RowsAsync();

        var report = await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], by: null);

        Assert.True(report.IsTaken);
        Assert.All(report.Documents, document => Assert.Equal(DocumentFate.AlreadyHere, document.Fate));
        Assert.All(report.Documents, document => Assert.EndsWith("is in the shop already with exactly this text; nothing was done.", document.Words, StringComparison.Ordinal));
        Assert.Equal(before, await RowsAsync());
    }

    [Fact]
    public async Task An_older_register_and_an_older_revision_are_current_again_when_they_are_imported_again()
    {
        var newer = Documents.WheelFitUp.With("revision: \"2\"\ndemo-data", "revision: \"3\"\ndemo-data");
        await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], by: null);
        await Import.ImportAsync([Documents.Register.With("title: Ninth Bay joint register", "title: Ninth Bay register"), newer], by: null);
        Assert.Equal(("Ninth Bay register", "3"), (Shelf.CurrentRegister()!.Register.Title, (await Shelf.CurrentAsync()).Single().Row.Revision));

        var report = await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], by: null);

        Assert.True(report.IsTaken);
        Assert.All(report.Documents, document => Assert.EndsWith("was in the shop before and is current again.", document.Words, StringComparison.Ordinal));
        Assert.Equal(("Ninth Bay joint register", "2"), (Shelf.CurrentRegister()!.Register.Title, (await Shelf.CurrentAsync()).Single().Row.Revision));
        Assert.Equal((2, 2), await RowsAsync());
    }

    [Fact]
    public async Task Errors_of_register_and_procedures_come_in_one_round()
    {
        var register = Documents.Register.With("title: Ninth Bay joint register", "title: \"\"");
        var procedure = Documents.WheelFitUp.With("code: P5", "code: P 5");

        var report = await Import.ImportAsync([register, procedure], by: null);

        Assert.Contains(report.Documents[0].Problems, problem => problem.Path == "title");
        Assert.Equal(
            ["The joint register of this batch has errors: this procedure was checked against it as far as it can be read", "“P 5” is no code"],
            report.Documents[1].Problems.Select(problem => problem.What));
    }

    [Fact]
    public async Task A_register_with_any_line_missing_is_judged_with_its_procedures()
    {
        var lines = System.Text.Encoding.UTF8.GetString(Documents.Register.Bytes).Split('\n');
        for (var gone = 0; gone < lines.Length; gone += 3)
        {
            var text = string.Join('\n', lines.Where((_, number) => number != gone));
            var report = await Import.ImportAsync([new DocumentFile("register.yaml", System.Text.Encoding.UTF8.GetBytes(text)), Documents.WheelFitUp.With("code: P5", "code: P 5")], by: null);

            Assert.False(report.IsTaken);
            Assert.NotEmpty(report.Documents[^1].Problems);
        }
    }

    [Fact]
    public async Task A_code_that_passes_for_another_is_refused_by_name_in_the_shop_and_in_the_batch()
    {
        Assert.True((await Import.ImportAsync([Documents.Register, Documents.WheelFitUp.With("code: P5", "code: P1")], by: null)).IsTaken);

        var shop1 = await Import.ImportAsync([Documents.WheelFitUp.With("code: P5", "code: Pl")], by: null);
        var batch = await Import.ImportAsync([Documents.WheelFitUp.With("code: P5", "code: W0"), Documents.WheelFitUp.With("code: P5", "code: WO")], by: null);

        Assert.Equal("Pl looks like P1, the code of another procedure", Assert.Single(shop1.Documents.Single().Problems, problem => !problem.IsCaution).What);
        Assert.Equal("WO looks like W0, the code of another procedure", Assert.Single(batch.Documents.SelectMany(document => document.Problems), problem => !problem.IsCaution).What);
    }

    [Fact]
    public async Task A_register_that_takes_joints_away_from_cars_needs_somebody_who_looked()
    {
        await Import.ImportAsync([Documents.Register], by: null);
        var fewer = Documents.Register.With("    name: propeller shaft flange bolt\n    system: drive\n    places: [driveline]\n    positions: 4", "    name: propeller shaft flange bolt\n    system: drive\n    places: [driveline]\n    positions: 3");

        var refused = await Import.ImportAsync([fewer], by: null);
        var taken = await Import.ImportAsync([fewer], by: null, lookedBy: new PersonId(Guid.NewGuid()));

        Assert.Equal("This register takes joints away from cars of this shop", Assert.Single(refused.Documents.Single().Problems).What);
        Assert.True(taken.IsTaken);
        Assert.NotNull((await shop.RowsAsync(rows => rows.JointRegisters.SingleAsync(row => row.Current))).LookedBy);
    }

    [Fact]
    public async Task Documents_are_read_while_somebody_else_writes()
    {
        await using var other = new SqliteConnection($"Data Source={shop.Get<DataFolder>().Database};Pooling=False");
        await other.OpenAsync();
        await using var locked = other.BeginTransaction();
        var bad = Documents.WheelFitUp.With("key: wheel.nut", "key: wheel.nutt");

        var report = await Import.ImportAsync([Documents.Register, bad], by: null);

        Assert.False(report.IsTaken);
        Assert.Contains(report.Documents.SelectMany(document => document.Problems), problem => problem.What.Contains("wheel.nutt", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_request_that_was_given_up_reads_nothing_on()
    {
        await Assert.ThrowsAnyAsync<OperationCanceledException>(
            () => Import.ImportAsync([Documents.Register], by: null, cancellation: new CancellationToken(canceled: true)));

        Assert.True((await Import.ImportAsync([Documents.Register], by: null)).Documents.All(document => document.Fate == DocumentFate.Stored));
    }

    [Fact]
    public async Task Several_imports_at_once_are_taken_one_after_the_other()
    {
        await Import.ImportAsync([Documents.Register], by: null);

        var reports = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => Import.ImportAsync([Documents.WheelFitUp, Documents.WheelStuds], by: null))));

        Assert.All(reports, report => Assert.True(report.IsTaken));
        Assert.Single(reports, report => report.Documents.All(document => document.Fate == DocumentFate.Stored));
        Assert.Equal(2, await shop.RowsAsync(rows => rows.Procedures.CountAsync()));
    }

    [Fact]
    public async Task A_batch_with_one_bad_file_stores_none()
    {
        var bad = Documents.WheelFitUp.With("key: wheel.nut", "key: wheel.nutt");

        var report = await Import.ImportAsync([Documents.Register, Documents.WheelStuds, bad], by: null);

        Assert.False(report.IsTaken);
        Assert.Equal([DocumentFate.NotTaken, DocumentFate.NotTaken, DocumentFate.Refused], report.Documents.Select(document => document.Fate));
        Assert.Equal((0, 0), await RowsAsync());
    }

    [Fact]
    public async Task A_bad_register_stores_none_and_says_so_at_the_procedure()
    {
        var report = await Import.ImportAsync([Documents.Register.With("system: hubs", "system: hub"), Documents.WheelFitUp], by: null);

        Assert.False(report.IsTaken);
        Assert.Equal("put the register right too; what is said here of its joints may go away with that", report.Documents[1].Problems[^1].Next);
        Assert.Equal((0, 0), await RowsAsync());
    }

    [Fact]
    public async Task A_procedure_needs_a_register_first()
    {
        var report = await Import.ImportAsync([Documents.WheelFitUp], by: null);

        var problem = Assert.Single(Assert.Single(report.Documents).Problems);
        Assert.Equal("The shop has no joint register yet", problem.What);
        Assert.Equal((0, 0), await RowsAsync());
    }

    [Fact]
    public async Task A_new_revision_becomes_current_and_the_old_one_stays()
    {
        await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], by: null);
        var old = (await Shelf.CurrentAsync()).Single();

        var report = await Import.ImportAsync([Documents.WheelFitUp.With("revision: \"2\"\ndemo-data", "revision: \"3\"\ndemo-data")], by: null);

        Assert.True(report.IsTaken);
        Assert.Equal("3", (await Shelf.CurrentAsync()).Single().Row.Revision);
        var kept = (await Shelf.FindAsync(old.Row.Digest))!;
        Assert.False(kept.IsCurrent);
        Assert.Equal("2", kept.Document.Value!.Revision);
    }

    [Fact]
    public async Task A_revision_never_changes_its_text()
    {
        await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], by: null);

        var report = await Import.ImportAsync([Documents.WheelFitUp.With("title: Wheel fit-up", "title: Wheels")], by: null);

        Assert.Equal("P5 revision 2 is in the shop with another text", Assert.Single(report.Documents[0].Problems).What);
        Assert.Equal((1, 1), await RowsAsync());
    }

    [Fact]
    public async Task Two_registers_in_one_batch_are_refused()
    {
        var report = await Import.ImportAsync([Documents.Register, Documents.Register.With("title: Ninth", "title: Tenth")], by: null);

        Assert.Contains(report.Documents[1].Problems, problem => problem.What == "A second joint register is in this batch");
        Assert.Equal((0, 0), await RowsAsync());
    }

    [Fact]
    public async Task Two_revisions_of_one_code_in_one_batch_are_refused()
    {
        var report = await Import.ImportAsync(
            [Documents.Register, Documents.WheelFitUp, Documents.WheelFitUp.With("revision: \"2\"\ndemo-data", "revision: \"3\"\ndemo-data")], by: null);

        Assert.Contains(report.Documents[2].Problems, problem => problem.What == "Another file of this batch is P5 too");
        Assert.Equal((0, 0), await RowsAsync());
    }

    [Fact]
    public async Task A_new_register_is_current_and_names_the_procedures_it_leaves_behind()
    {
        await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], by: null);
        var old = Shelf.CurrentRegister()!;
        var wheel = (await Shelf.CurrentAsync()).Single();

        var report = await Import.ImportAsync([Documents.Register.With("hub: {values: [free, held]", "hub: {values: [free, locked]")], by: null);

        Assert.True(report.IsTaken);
        var caution = Assert.Single(report.Documents[0].Problems);
        Assert.True(caution.IsCaution);
        Assert.StartsWith("P5 revision 2 does not fit this register", caution.What, StringComparison.Ordinal);
        Assert.NotEqual(old.Digest, Shelf.CurrentRegister()!.Digest);
        Assert.Null((await Shelf.CurrentAsync()).Single().Document.Value);
        Assert.Equal("P5", AsTaken(wheel.Row.Digest, old.Digest).Code);
    }

    [Fact]
    public async Task The_person_who_imported_stands_in_the_row()
    {
        var person = new PersonId(Guid.NewGuid());

        await Import.ImportAsync([Documents.Register, Documents.WheelFitUp], person);

        Assert.Equal(person, (await Shelf.CurrentAsync()).Single().Row.ImportedBy);
        Assert.Equal(shop.Time.GetUtcNow().UtcDateTime, (await Shelf.CurrentAsync()).Single().Row.ImportedAt);
    }

    private Procedure AsTaken(string digest, string register) => shop.Get<LogbookSnapshots>().Read(reader =>
        shop.Get<Web.Desk.Documents>().Read(reader, digest, register)).Value!;

    private Task<(int Registers, int Procedures)> RowsAsync() =>
        shop.RowsAsync(async rows => (await rows.JointRegisters.CountAsync(), await rows.Procedures.CountAsync()));
}
