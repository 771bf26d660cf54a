using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Microsoft.Extensions.DependencyInjection;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;
using ShopJobs.Web.Tests.TorqueTools;

namespace ShopJobs.Web.Tests.Data;

/// <summary>A database file of an earlier program opens in this one, with everything that was in it.</summary>
public sealed class OlderDatabaseTests : IDisposable
{
    private readonly ToolBench bench = new();
    private readonly ServiceProvider services;

    public OlderDatabaseTests()
    {
        var collection = new ServiceCollection();
        bench.Register(collection);
        services = collection.BuildServiceProvider();
    }

    public void Dispose()
    {
        services.Dispose();
        bench.Dispose();
    }

    [Fact]
    public async Task A_file_from_before_parts_were_compared_keeps_its_cars_and_takes_options()
    {
        var car = new CarId(Guid.NewGuid());
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("FirstRows");
            Assert.Contains(await older.Database.GetPendingMigrationsAsync(), name => name.EndsWith("_PartOptions", StringComparison.Ordinal));
            var owner = Guid.NewGuid();
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Customers (Id, Name, Contact, ChangedAt, Revision) VALUES ({owner}, 'Rasmo Field', '', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Cars (Id, CustomerId, Name, Model, Mark, Colour, Note, Place, ChangedAt, Revision) VALUES ({car.Value}, {owner}, 'Blue', 'Brennock 220', '', '', '', 'LiftA', '2026-01-01', {owner})");
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Equal(car, (await shop.Cars.SingleAsync()).Id);
        Assert.Empty(await shop.PartOptions.ToListAsync());
        shop.WheelStacks.Add(new() { Id = Guid.NewGuid(), CarId = car, Name = "front", WheelPad = "0.55 in", WheelSeat = "flat", NutSeat = "flat", NutThread = "20" });
        await shop.SaveChangesAsync();
        shop.ChangeTracker.Clear();
        Assert.Equal("0.55 in", (await shop.WheelStacks.SingleAsync()).WheelPad);
    }

    [Fact]
    public async Task A_file_from_before_choices_kept_their_mark_keeps_its_choices_and_its_stacks_in_millimetres()
    {
        var (owner, car, job, lead) = (Guid.NewGuid(), Guid.NewGuid(), Guid.NewGuid(), Guid.NewGuid());
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("PartOptions");
            Assert.EndsWith("_ChoicesAsShown", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            // The rows stand alone: no car, job or person is behind them.
            await older.Database.OpenConnectionAsync();
            await older.Database.ExecuteSqlRawAsync("PRAGMA foreign_keys = 0");
            await older.Database.ExecuteSqlAsync($"""
                INSERT INTO WheelStacks (Id, CarId, Name, HubFlange, DiscHat, Spacer, WheelPad, Washer, WheelSeat, NutSeat, NutThread, ClosedNutDepth, ChangedAt, Revision)
                VALUES ({owner}, {car}, 'front', '0.0', '7.0', '0.0', '13.97', '0.0', 'cone 60°', 'cone 60°', '20.0', '24.0', '2026-01-01', {owner})
                """);
            await older.Database.ExecuteSqlAsync($"""
                INSERT INTO PartChoices (JobId, GroupId, OptionId, Option, Reason, Cautions, Others, At, By)
                VALUES ({job}, 'stud', {owner}, 'Quillon Q4', 'Fits.', '', '', '2026-01-01', {lead})
                """);
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        var choice = await shop.PartChoices.SingleAsync();
        Assert.Equal(("Fits.", null), (choice.Reason, choice.Mark));
        var stack = StoredParts.Stack(await shop.WheelStacks.SingleAsync());
        Assert.Equal(
            (0.0, 7.0, 13.97, 20.0, 24.0),
            (stack.HubFlange.Millimeters, stack.DiscHat.Millimeters, Math.Round(stack.WheelPad.Millimeters, 6), stack.NutThread.Millimeters, stack.NutEnd.ClosedDepth!.Value.Millimeters));
    }

    [Fact]
    public async Task A_car_of_before_visits_were_kept_counts_as_here_and_in_kilometres()
    {
        var car = new CarId(Guid.NewGuid());
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("LinksEndWithOwner");
            Assert.EndsWith("_CarsComeAndGo", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            var owner = Guid.NewGuid();
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Customers (Id, Name, Contact, ChangedAt, Revision) VALUES ({owner}, 'Rasmo Field', '', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Cars (Id, CustomerId, Name, Model, Mark, Colour, Note, Place, ChangedAt, Revision) VALUES ({car.Value}, {owner}, 'Blue', 'Brennock 220', '', '', '', 'LiftB', '2026-01-01', {owner})");
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        var kept = await shop.Cars.SingleAsync();
        Assert.Equal((car, "LiftB", DistanceUnit.Kilometre, true), (kept.Id, kept.Place, kept.Distance, kept.CountsAsHere));
    }

    [Fact]
    public async Task A_file_from_before_customers_confirmed_keeps_its_links_and_takes_what_they_say()
    {
        var (owner, car, lead, link) = (Guid.NewGuid(), new CarId(Guid.NewGuid()), Guid.NewGuid(), Guid.NewGuid());
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("CarsComeAndGo");
            Assert.EndsWith("_SummariesAcknowledged", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Customers (Id, Name, Contact, ChangedAt, Revision) VALUES ({owner}, 'Rasmo Field', '01632 960100', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Cars (Id, CustomerId, Name, Model, Mark, Colour, Note, Place, ChangedAt, Revision) VALUES ({car.Value}, {owner}, 'Blue', 'Brennock 220', '', '', '', 'LiftB', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO People (Id, Name, Initials, PinHash, PinFailures, Active, Demo, ChangedAt, Revision) VALUES ({lead}, 'Edda', 'ED', '', 0, 1, 0, '2026-01-01', {lead})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO CustomerLinks (Id, TokenHash, CarId, CreatedAt, CreatedBy, ExpiresAt, ChangedHands) VALUES ({link}, x'00', {car.Value}, '2026-01-01', {lead}, '2027-01-01', 0)");
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Equal(link, (await shop.CustomerLinks.SingleAsync()).Id);
        shop.Acknowledgements.Add(new() { Id = Guid.NewGuid(), CarId = car, CustomerId = new CustomerId(owner), Version = 1, At = DateTime.UnixEpoch, Words = "Read." });
        await shop.SaveChangesAsync();
        shop.Acknowledgements.Add(new() { Id = Guid.NewGuid(), CarId = car, CustomerId = new CustomerId(owner), Version = 1, At = DateTime.UnixEpoch, Words = "Again." });
        await Assert.ThrowsAsync<DbUpdateException>(() => shop.SaveChangesAsync());
    }

    [Fact]
    public async Task A_file_from_before_cars_followed_a_list_keeps_its_current_procedure_and_takes_remarks_on_steps()
    {
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("SummariesAcknowledged");
            Assert.EndsWith("_JointsByCar", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            foreach (var (revision, day) in new[] { ("2", "2026-02-01"), ("1", "2026-01-01") })
            {
                await older.Database.ExecuteSqlAsync(
                    $"INSERT INTO Procedures (Digest, Code, Title, Revision, Yaml, Demo, ImportedAt) VALUES ({revision}, 'P5', 'Wheels', {revision}, x'00', 1, {day})");
            }
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Equal(["2", "1"], (await shop.Procedures.ToListAsync()).OrderByDescending(row => row.CurrentSince).Select(row => row.Revision));
        Assert.All(await shop.Procedures.ToListAsync(), row => Assert.Equal(row.ImportedAt, row.CurrentSince));
        Assert.Empty(await shop.StepRemarks.ToListAsync());
    }

    [Fact]
    public async Task A_file_from_before_customers_were_erased_keeps_its_customers_unerased_and_takes_owners_before()
    {
        var (owner, car) = (Guid.NewGuid(), new CarId(Guid.NewGuid()));
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("JointsByCar");
            Assert.EndsWith("_CustomersErased", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Customers (Id, Name, Contact, ChangedAt, Revision) VALUES ({owner}, 'Rasmo Field', '01632 960100', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Cars (Id, CustomerId, Name, Model, Mark, Colour, Note, Place, ChangedAt, Revision) VALUES ({car.Value}, {owner}, 'Blue', 'Brennock 220', '', '', '', 'LiftB', '2026-01-01', {owner})");
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        var kept = await shop.Customers.SingleAsync();
        Assert.Equal(("Rasmo Field", "01632 960100", null, null), (kept.Name, kept.Contact, kept.ErasedAt, kept.ErasedBy));
        shop.OwnersBefore.Add(new() { Id = Guid.NewGuid(), CarId = car, CustomerId = kept.Id, Until = DateTime.UnixEpoch });
        Assert.Equal(1, await shop.SaveChangesAsync());
    }

    [Fact]
    public async Task A_file_from_before_anything_was_retired_has_nothing_retired_and_takes_names_of_before()
    {
        var (owner, lead) = (Guid.NewGuid(), new PersonId(Guid.NewGuid()));
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("StepRemarks");
            Assert.EndsWith("_NamesAndRetired", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Customers (Id, Name, Contact, ChangedAt, Revision) VALUES ({owner}, 'Rasmo Field', '', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Cars (Id, CustomerId, Name, Model, Mark, Colour, Note, Place, ChangedAt, Revision) VALUES ({owner}, {owner}, 'Blue', 'Brennock 220', '', '', '', 'LiftB', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO People (Id, Name, Initials, PinHash, PinFailures, Active, Demo, ChangedAt, Revision) VALUES ({lead.Value}, 'Edda', 'ED', '', 0, 1, 0, '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Procedures (Digest, Code, Title, Revision, Yaml, Demo, ImportedAt, CurrentSince) VALUES ('2', 'P5', 'Wheels', '2', x'00', 1, '2026-01-01', '2026-01-01')");
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Null((await shop.Customers.SingleAsync()).RetiredAt);
        Assert.Null((await shop.Cars.SingleAsync()).RetiredAt);
        Assert.Null((await shop.Procedures.SingleAsync()).RetiredAt);
        Assert.Empty(await shop.NamesBefore.ToListAsync());
        shop.NamesBefore.Add(new() { Id = Guid.NewGuid(), PersonId = lead, Name = "Eda", Until = DateTime.UnixEpoch, ChangedBy = lead });
        Assert.Equal(1, await shop.SaveChangesAsync());
    }

    [Fact]
    public async Task A_file_from_before_places_were_rows_finds_the_four_it_had_under_the_keys_that_its_cars_and_books_hold()
    {
        var (owner, car) = (Guid.NewGuid(), new CarId(Guid.NewGuid()));
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("NamesAndRetired");
            Assert.EndsWith("_PlacesOfTheShop", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Customers (Id, Name, Contact, ChangedAt, Revision) VALUES ({owner}, 'Rasmo Field', '', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Cars (Id, CustomerId, Name, Model, Mark, Colour, Note, Place, ChangedAt, Revision) VALUES ({car.Value}, {owner}, 'Blue', 'Brennock 220', '', '', '', 'LiftB', '2026-01-01', {owner})");
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Equal(
            [("LiftA", "Lift A", PlaceKind.Lift), ("LiftB", "Lift B", PlaceKind.Lift), ("Floor", "Floor space", PlaceKind.Floor), ("Outside", "Outside", PlaceKind.Outside)],
            (await shop.Places.OrderBy(place => place.Rank).ToListAsync()).Select(place => (place.Key, place.Name, place.Kind)));
        Assert.All(await shop.Places.ToListAsync(), place => Assert.Null(place.RetiredAt));
        var reading = services.GetRequiredService<CarDesk>().Read(car, null);
        Assert.Equal("Here, Lift B", Whereabouts.Of(await shop.Cars.SingleAsync(), reading, services.GetRequiredService<ShopClock>()).Words);
        Assert.Equal("Blue", services.GetRequiredService<CarDesk>().Read(new CarId(owner), null).Now.TakenBy("LiftB"));
    }

    [Fact]
    public async Task A_file_from_before_tools_had_keys_keeps_its_tools_and_takes_one_living_key_each()
    {
        var (tool, lead) = (Guid.NewGuid(), new PersonId(Guid.NewGuid()));
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("PlacesOfTheShop");
            Assert.EndsWith("_ToolKeys", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            await older.Database.ExecuteSqlAsync($"INSERT INTO Tools (Id, Name, ChangedAt, Revision) VALUES ({tool}, 'W8', '2026-01-01', {tool})");
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Equal("W8", (await shop.Tools.SingleAsync()).Name);
        Assert.Empty(await shop.ToolKeys.ToListAsync());
        shop.ToolKeys.Add(new() { Id = Guid.NewGuid(), ToolId = tool, KeyHash = [1], MadeBy = lead, EndedAt = DateTime.UnixEpoch });
        shop.ToolKeys.Add(new() { Id = Guid.NewGuid(), ToolId = tool, KeyHash = [2], MadeBy = lead });
        await shop.SaveChangesAsync();
        shop.ToolKeys.Add(new() { Id = Guid.NewGuid(), ToolId = tool, KeyHash = [3], MadeBy = lead });
        await Assert.ThrowsAsync<DbUpdateException>(() => shop.SaveChangesAsync());
    }

    [Fact]
    public async Task A_file_from_before_the_parts_catalogue_keeps_everything_that_was_in_it_and_takes_parts()
    {
        var (owner, car, tool, lead) = (Guid.NewGuid(), Guid.NewGuid(), Guid.NewGuid(), new PersonId(Guid.NewGuid()));
        string[] before;
        await using (var older = await NewContextAsync())
        {
            await older.GetService<IMigrator>().MigrateAsync("FloorSpace");
            Assert.EndsWith("_PartsCatalogue", (await older.Database.GetPendingMigrationsAsync()).First(), StringComparison.Ordinal);
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Customers (Id, Name, Contact, ChangedAt, Revision) VALUES ({owner}, 'Rasmo Field', '01632 960100', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO Cars (Id, CustomerId, Name, Model, Mark, Colour, Note, Place, ChangedAt, Revision) VALUES ({car}, {owner}, 'Blue', 'Brennock 220', '', '', '', 'LiftB', '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync(
                $"INSERT INTO People (Id, Name, Initials, PinHash, PinFailures, Active, Demo, ChangedAt, Revision) VALUES ({lead.Value}, 'Edda', 'ED', '', 0, 1, 0, '2026-01-01', {owner})");
            await older.Database.ExecuteSqlAsync($"INSERT INTO Tools (Id, Name, ChangedAt, Revision) VALUES ({tool}, 'W8', '2026-01-01', {tool})");
            await older.Database.ExecuteSqlAsync($"INSERT INTO Settings (Key, Value) VALUES ('shop-name', 'Ninth Bay')");
            before = await RowsAsync(older);
        }

        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        Assert.Empty(await shop.Database.GetPendingMigrationsAsync());
        Assert.Contains("Cars: 1", before);
        Assert.Equal(before, (await RowsAsync(shop)).Except(["Parts: 0", "PartImportDrafts: 0"]));
        Assert.Equal(("Rasmo Field", "Blue", "Edda", "W8", "Ninth Bay"), ((await shop.Customers.SingleAsync()).Name, (await shop.Cars.SingleAsync()).Name,
            (await shop.People.SingleAsync()).Name, (await shop.Tools.SingleAsync()).Name, (await shop.Settings.SingleAsync()).Value));
        Add("Quillon", "Q4");
        Assert.Equal(1, await shop.SaveChangesAsync());
        Add("QUILLON", "q4");
        await Assert.ThrowsAsync<DbUpdateException>(() => shop.SaveChangesAsync());

        void Add(string maker, string number)
        {
            var part = new PartRow { Id = new PartId(Guid.NewGuid()), Name = "Wheel stud" };
            part.Call(maker, number);
            part.Touch(lead, DateTime.UnixEpoch);
            shop.Parts.Add(part);
        }
    }

    // Every table of the shop with how many rows are in it, but the list of migrations.
    private static async Task<string[]> RowsAsync(ShopDbContext shop)
    {
        var tables = await shop.Database.SqlQuery<string>(
            $"SELECT name AS Value FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%' AND instr(name, 'EFMigrations') = 0 ORDER BY name").ToListAsync();
        var lines = new List<string>();
        foreach (var table in tables)
        {
#pragma warning disable EF1002 // The names of the database's own tables.
            lines.Add($"{table}: {(await shop.Database.SqlQueryRaw<long>($"SELECT count(*) AS Value FROM \"{table}\"").ToListAsync())[0]}");
#pragma warning restore EF1002
        }

        return [.. lines];
    }

    [Fact]
    public async Task The_logbook_is_as_guarded_after_the_migration_as_before()
    {
        await services.MigrateShopAsync();

        await using var shop = await NewContextAsync();
        var triggers = await shop.Database.SqlQuery<string>($"SELECT name AS Value FROM sqlite_master WHERE type = 'trigger'").ToListAsync();
        Assert.NotEmpty(triggers);
        Assert.All(triggers, name => Assert.Contains(name, LogbookSchema.Script(LogbookMigration.ScriptName), StringComparison.Ordinal));
    }

    private Task<ShopDbContext> NewContextAsync() => services.GetRequiredService<IDbContextFactory<ShopDbContext>>().CreateDbContextAsync();
}
