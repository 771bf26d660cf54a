namespace ShopJobs.Domain.Summaries;

/// <summary>What changed since the version before, in the customer's words.</summary>
public static class ChangeWords
{
    /// <summary>The heading over the changes of one kind.</summary>
    public static string Of(ChangeKind kind) => kind switch
    {
        ChangeKind.New => "New",
        ChangeKind.Gone => "No longer on the page",
        ChangeKind.StandsNow => "Done or given since",
        ChangeKind.StandsNoLonger => "No longer so",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Not a kind of change."),
    };

    /// <summary>What part of the page a line is from, set before it.</summary>
    public static string Of(ChangePart part) => part switch
    {
        ChangePart.Open => "Not finished",
        ChangePart.Duty => "To do next",
        ChangePart.Release => "Release",
        ChangePart.Work => "Work",
        ChangePart.Finding => "Found",
        ChangePart.Mistake => "Our mistake",
        ChangePart.Tightened => "Tightened",
        ChangePart.Fitted => "Part",
        ChangePart.Result => "Result",
        ChangePart.Advice => "Advice",
        ChangePart.Declined => "You declined",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "Not a part of the page."),
    };
}
