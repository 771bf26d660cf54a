namespace ShopJobs.Domain.Logbook;

/// <summary>A second thought in words, for the one person it is about.</summary>
public static class SecondThoughtWords
{
    private const string Alone = "Only you see this, and it is kept nowhere.";

    /// <summary>What was seen, what to do if it is so, and that nobody else is told.</summary>
    public static string Of(SecondThought thought) => thought switch
    {
        SecondThought.EqualReadings =>
            $"Ten readings alike within ten seconds. Was each fastener pulled? If one was not, take its record back with UNDO LAST, or open the joint and start again. {Alone}",
        SecondThought.QuickLook =>
            $"Signed within five seconds. Were all the marks looked at? If not, look now, and HOLD what is not good. {Alone}",
        _ => throw new ArgumentOutOfRangeException(nameof(thought), thought, "This thought has no words."),
    };
}
