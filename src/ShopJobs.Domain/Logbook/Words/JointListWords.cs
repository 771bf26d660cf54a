using System.Globalization;
using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Which joints a car has, in plain words: its entries, and the reasons that count against them.</summary>
internal static class JointListWords
{
    public static string Of(Entry entry, EntryNames names) => entry switch
    {
        JointListChanged { Asked: { } asked } fact => $"Looked, and the car has what entry {EntryWords.Number(asked)} says: {Said(fact.Follows, fact.Counts, names)}.",
        JointListChanged fact => $"The car's joints from now on: {Said(fact.Follows, fact.Counts, names)}.",
        FewerJointsAsked fact => $"Asked that the car has fewer joints: {Said(fact.Follows, fact.Counts, names)}. A second person looks first.",
        JointListKept fact => $"Looked, and the car keeps its joints: entry {EntryWords.Number(fact.Asked)} is not so.",
        _ => throw new ArgumentOutOfRangeException(nameof(entry), entry.GetType().Name, "Not an entry of a car's joints."),
    };

    public static (string Words, string Next)? Of(HoldPoint point, HoldSubject on) => point.Reason switch
    {
        HoldReason.DoesNotFit when point.Misfit is { Place: null } missing => (
            $"This car has no {on.Names.Joint(new Joint(missing.Key, "")).TrimEnd()}, and {point.Name} works on it", "choose another procedure, or correct what the car follows"),
        HoldReason.DoesNotFit when point.Misfit is { } misfit => (
            string.Create(CultureInfo.InvariantCulture, $"{point.Name} works on {misfit.Visits} of {on.Names.Joint(new Joint(misfit.Key, misfit.Place ?? ""))}; this car has {misfit.Has}"),
            "choose a procedure for this car, leave that place out, or correct the car's count"),
        HoldReason.DoesNotFit => ("The procedure does not fit this car", "choose another"),
        HoldReason.NotForThisCar => ($"This procedure is for {string.Join(", ", point.Choices)}; this car follows {point.Name}", "choose a procedure for this car"),
        HoldReason.FewerInAJob => ($"{point.Name ?? "A job"} runs on this car", "end the job first: while it runs, joints are added and none taken away"),
        HoldReason.NoMoreThanNow => ("The car has that many already", "type how many there are; fewer is asked by the lead"),
        HoldReason.CountOutside => ($"A joint has from 0 to {EntryWords.Number(JointCount.Most)} positions", "count again"),
        HoldReason.NothingAskedOfJoints => ("Nobody asks to take joints away, or it is settled", "look at the car again"),
        HoldReason.UnknownCarKind => ($"The register has no kind of car “{point.Name}”", point.Choices.Count > 0 ? $"choose {string.Join(", ", point.Choices)}" : "look at the register"),
        _ => null,
    };

    private static string Said(string? follows, IReadOnlyList<JointCount> counts, EntryNames names)
    {
        string[] list = follows is null ? [] : [follows switch { JointList.Base => "those of the register", JointList.None => "no list yet", _ => $"those of the kind of car “{follows}”" }];
        return string.Join("; ", list.Concat(counts.Select(count => string.Create(
            CultureInfo.InvariantCulture, $"{names.Joint(new Joint(count.Key, count.Place))}: {count.Positions}"))));
    }
}
