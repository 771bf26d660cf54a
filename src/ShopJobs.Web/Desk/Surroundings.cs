using System.Globalization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Desk;

/// <summary>What is known beside a car's own logbook: rights, register, procedures, tools. Everything read is a dependency.</summary>
public sealed class Surroundings(Documents documents, ShopClock clock, ClockWatch watch)
{
    private static readonly JointRegister NoRegister = new(
        "none", false, new Dictionary<string, JointKind>(), new Dictionary<string, IReadOnlyList<string>>(), new Dictionary<string, IReadOnlyList<Undone>>());

    /// <summary>Circumstances that read tools and procedures as they are asked for; good within one reading.</summary>
    internal Circumstances Of(LogbookReader reader, PersonId person) => Of(reader, person, watch.Look(reader));

    /// <summary>As the other, with the clock as it was seen.</summary>
    internal Circumstances Of(LogbookReader reader, PersonId person, SeenClock seen)
    {
        var today = DateOnly.FromDateTime(clock.OnTheWall(reader.At));
        return new Circumstances(
            person,
            reader.RightsOf(person, today),
            reader.At,
            today,
            Register(reader),
            job => documents.Placed(reader, job),
            tool => reader.Fold(Folders.LogbookOf(tool), Folders.Tool))
        {
            OnTheWall = clock.OnTheWall,
            Shop = seen.Shop,
            Ahead = reader.At - reader.Clock,
            TiedTo = TiedTo(reader, person),
            PersonName = id => NameOf(reader, id),
            PullsWith = tool => ToolUsers.PullsWith(reader, tool),
        };
    }

    /// <summary>Those for whom this person is no second person: they added him, gave him a right or made his PIN, and no third has confirmed him.</summary>
    internal static IReadOnlySet<PersonId> TiedTo(LogbookReader reader, PersonId person) =>
        reader.Row($"tied:{person.Value}", Ties.Sql, [person.Value], ids => ids as string ?? "")
            .Split(',', StringSplitOptions.RemoveEmptyEntries)
            .Select(text => new PersonId(Guid.Parse(text, CultureInfo.InvariantCulture)))
            .ToHashSet();

    /// <summary>Circumstances that may be kept after the reading: every tool and every job's procedure is read now.</summary>
    internal Circumstances Kept(LogbookReader reader, PersonId person, CarState state, IReadOnlyDictionary<ToolId, ToolState> tools)
    {
        var placed = state.Jobs.Values.ToDictionary(job => job.Id, job => documents.Placed(reader, job));
        var names = state.Positions.Values.Select(book => book.LastDecision).Concat(state.WorkHolds.Values.Select(hold => hold.Decision))
            .OfType<DecisionMade>().Select(made => made.By).Concat(state.Corrections.Values.Select(correction => correction.Person)).Concat(state.FewerAsked.Values.Select(asked => asked.Person))
            .Concat(state.Jobs.Values.SelectMany(job => job.SignOffs.Values).Where(sign => sign.AwaitsCountersign).Select(sign => sign.Person))
            .Concat(state.Jobs.Values.SelectMany(job => job.Finished.Values).Select(finished => finished.Person)).Distinct().ToDictionary(id => id, id => NameOf(reader, id));
        var pulls = tools.Where(tool => tool.Value.Tool is not null).ToDictionary(tool => tool.Key, tool => ToolUsers.PullsWith(reader, tool.Key));
        return Of(reader, person) with
        {
            PullsWith = tool => pulls.GetValueOrDefault(tool),
            Placed = job => placed[job.Id],
            PersonName = id => names.GetValueOrDefault(id, "Somebody"),
            Tool = tool => tools.GetValueOrDefault(tool, ToolState.Empty),
        };
    }

    /// <summary>With the joints that this car has, what is known of its own row, the places of the shop and the cars that stand there.</summary>
    internal static Circumstances About(Circumstances now, LogbookReader reader, CarId car, CarState state)
    {
        var miles = reader.Row($"distance:{car.Value}", "SELECT Distance FROM Cars WHERE Id = $1", [car.Value], unit => unit as string == nameof(DistanceUnit.Mile));
        var standing = Standing(reader);
        return now.For(state) with
        {
            Distance = miles ? DistanceUnit.Mile : DistanceUnit.Kilometre,
            Places = Places(reader),
            StandsAt = place => standing.FirstOrDefault(other => other.Place == place && other.Car != car.Value).Name,
        };
    }

    /// <summary>The places of the shop, as they are called now.</summary>
    internal static ShopPlaces Places(LogbookReader reader) => reader.Row(
        "places",
        """SELECT group_concat("Key" || char(9) || Kind || char(9) || (RetiredAt IS NULL) || char(9) || Name, char(10)) FROM (SELECT * FROM Places ORDER BY Rank, "Key")""",
        [],
        rows => new ShopPlaces(Lines(rows).Select(row => row.Split('\t', 4)).Select(row => new ShopPlace(row[0], row[3], Enum.Parse<PlaceKind>(row[1]), row[2] == "1"))));

    // Every car that is valid somewhere; one that left stands nowhere.
    private static IEnumerable<(Guid Car, string Place, string Name)> Standing(LogbookReader reader)
    {
        var cars = reader.Row("standing", "SELECT group_concat(Id || char(9) || Place || char(9) || Name, char(10)) FROM (SELECT Id, Place, Name FROM Cars WHERE Place <> '' ORDER BY Name)", [], rows => rows as string);
        return Lines(cars).Select(row => row.Split('\t', 3)).Select(row => (Guid.Parse(row[0], CultureInfo.InvariantCulture), row[1], row[2]));
    }

    private static string[] Lines(object? rows) => (rows as string ?? "").Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Every tool of the shop.</summary>
    internal static IReadOnlyDictionary<ToolId, ToolState> AllTools(LogbookReader reader) =>
        reader.Row("tools", "SELECT group_concat(Id) FROM (SELECT Id FROM Tools ORDER BY Id)", [], ids => ids as string ?? "").Split(',', StringSplitOptions.RemoveEmptyEntries)
            .Select(text => new ToolId(Guid.Parse(text, CultureInfo.InvariantCulture)))
            .ToDictionary(id => id, id => reader.FoldAsFarAsReadable(Folders.LogbookOf(id), Folders.Tool).State);

    /// <summary>True while the person works here.</summary>
    internal static bool IsActive(LogbookReader reader, PersonId person) =>
        reader.Row($"active:{person.Value}", "SELECT Active FROM People WHERE Id = $1", [person.Value], active => active is 1L);

    private static string NameOf(LogbookReader reader, PersonId person) =>
        reader.Row($"name:{person.Value}", "SELECT Name FROM People WHERE Id = $1", [person.Value], name => name as string ?? "Somebody");

    private JointRegister Register(LogbookReader reader) =>
        Documents.CurrentRegister(reader) is { } digest ? documents.Register(reader, digest) : NoRegister;
}
