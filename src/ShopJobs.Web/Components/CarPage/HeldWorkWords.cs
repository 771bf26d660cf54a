using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>A held step, result or lot in words.</summary>
public static class HeldWorkWords
{
    /// <summary>What is held: "step “Faces clean”", "result alignment", "lot 4471".</summary>
    public static string Of(CarReading reading, WorkHold hold)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(hold);
        return hold.Fact switch
        {
            { Job: { } job, Step: { } step } => $"Step “{reading.Placed(reading.State.Jobs[job]).Step(step)?.Title() ?? step}”",
            { Result: { } result } when reading.State.Correctables[result].Entry is ResultRecorded fact => $"Result “{ConditionWords.Plain(fact.Name)}”",
            _ => $"Lot or kit {hold.Fact.Lot}",
        };
    }

    /// <summary>What has to be known before it is decided.</summary>
    public static IEnumerable<string> Facts(CarReading reading, WorkHold hold)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(hold);
        return hold.Fact switch
        {
            { Job: { } job, Step: { } step } => [reading.State.Jobs[job].SignOffs.ContainsKey(step) ? "It was signed before." : "It is not signed."],
            { Result: { } result } when reading.State.Correctables[result].Entry is ResultRecorded fact =>
                [$"Recorded: {string.Join(", ", fact.Values.Select(value => $"{ConditionWords.Plain(value.Name)} {value.Amount()}"))}{(fact.Instrument is { } with ? $", with {with}" : "")}."],
            { Lot: { } lot } => OfLot(reading, lot),
            _ => [],
        };
    }

    /// <summary>What a decision means for it.</summary>
    public static string Means(WorkHold hold, Disposition disposition)
    {
        ArgumentNullException.ThrowIfNull(hold);
        return (hold.Fact, disposition) switch
        {
            ({ Lot: not null }, Disposition.UseAsIs) => "The lot is good: what carries it is free.",
            ({ Lot: not null }, _) => "No more of it is fitted; what carries it gets new hardware of another lot.",
            ({ Result: not null }, Disposition.UseAsIs) => "The result stays valid.",
            ({ Result: not null }, _) => "The result is void and done again.",
            (_, Disposition.UseAsIs) => "The step goes on as it is.",
            _ => "The step is done again; what was signed falls.",
        };
    }

    /// <summary>What comes next.</summary>
    public static string Next(WorkHold hold, Disposition disposition)
    {
        ArgumentNullException.ThrowIfNull(hold);
        return disposition == Disposition.UseAsIs ? "Go on with the work."
            : hold.Fact.Lot is not null ? "Take another lot."
            : hold.Fact.Result is not null ? "Do it again and record it."
            : "Do it again and sign it.";
    }

    private static List<string> OfLot(CarReading reading, string lot)
    {
        var on = reading.State.FittedFrom(lot).Select(book => book.Position).ToList();
        return
        [
            on.Count == 0 ? "Nothing on this car carries it by the book." : $"On this car it is on {JointLineWords.NamesOf(reading, new Dictionary<PersonId, string>()).Positions(on)}.",
            "It is held on this car. Where the same lot went to other cars, press HOLD on them too.",
        ];
    }
}
