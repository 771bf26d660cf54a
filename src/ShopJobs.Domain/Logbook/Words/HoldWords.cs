using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Logbook;

/// <summary>Says reasons to people: what is wrong, and what somebody at the car does next.</summary>
public static class HoldWords
{
    /// <summary>One reason, with the shop's names.</summary>
    public static SaidHold Say(this Circumstances now, HoldPoint point) => Say(point, HoldNames.Of(now));

    /// <summary>One reason, with these names.</summary>
    public static SaidHold Say(HoldPoint point, HoldNames names)
    {
        ArgumentNullException.ThrowIfNull(point);
        return Say(point, names, point.Position is { } position ? [position.Number] : []);
    }

    /// <summary>One reason that these fasteners of its joint share: "wheel nut front-left 1 to 3: hand-tight".</summary>
    public static SaidHold Say(HoldPoint point, HoldNames names, IReadOnlyList<int> numbers)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(numbers);
        return HoldSentences.Of(point, new HoldSubject(names, point.Joint, numbers));
    }

    /// <summary>What is wrong with a record or fastener, as the end of "held: …" or "does not count: …".</summary>
    public static string Of(HoldReason reason) => Say(new HoldPoint(reason), HoldNames.Plain).Words;

    /// <summary>What somebody at the car does about it.</summary>
    public static string Next(HoldReason reason) => Say(new HoldPoint(reason), HoldNames.Plain).Next;
}

/// <summary>What a sentence is about: a joint, and which of its fasteners.</summary>
internal sealed record HoldSubject(HoldNames Names, Joint? About, IReadOnlyList<int> Numbers)
{
    /// <summary>The joint: "wheel nut front-left".</summary>
    public string Joint => About is { } joint ? Names.Joint(joint) : "it";

    /// <summary>The fasteners: "wheel nut front-left 1 to 3".</summary>
    public string Fasteners => Numbers.Count == 0 ? Joint : $"{Joint} {EntryNames.Numbers(Numbers.Select(number => (long)number))}";

    /// <summary>"is", or "are" of several.</summary>
    public string Is => Numbers.Count > 1 ? "are" : "is";

    /// <summary>"wheel nut front-left 3: hand-tight"; the words alone where no joint is named.</summary>
    public string With(string words) => About is null ? words : $"{Fasteners}: {words}";
}
