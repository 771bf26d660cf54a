namespace ShopJobs.Web.Tests.Architecture;

/// <summary>What the screens said once in many ways, and what they say now.</summary>
internal static class PlainWords
{
    public static IReadOnlyList<PlainWord> All { get; } =
    [
        new("range", @"\d\.\.\d|\}\.\.\{", "“40 to 60 N·m”", "Two points are a programmer's notation.",
            "permitted 40..60 N·m", "permitted 40 to 60 N·m", "Amounts.cs", "StageReader.cs"),
        new("date", @"d MMM|HH:mm|:yyyy-", "it through WallTime", "Every day and time is written by one function, as 29 Nov 2026, 13:26.",
            "{at:d MMM yyyy}", "{WallTime.Day(at)}", "WallTime.cs", "Acceptance.cs", "EntryItem.razor", "EnvelopeCodec.cs", "CardTime.cs", "EntryWords.cs"),
        new("open", @">\s*Open\s*</|Open joints|Opens (for|until)|Open (the demo|an empty|the) shop|[Oo]pen it from|is open already", "View, Not finished, Valid for, Start, Go to it",
            "Only a joint is open.", "Open joints", "Not finished"),
        new("stand", @"(?<![.@""-])\b[Ss]tands?\b(?!-)", "valid, current, printed on, marked on, is at, in the condition", "It had nine meanings, and a car stands on a lift.",
            "The car stands otherwise now", "The car has been moved or lowered", "*.yaml"),
        new("expired", @"(?<![.@\w])[Ll]aps(e|es|ed)\b(?!\()", "“expires”, “expired”", "A release by distance or date expires; a record is void; a summary is out of date or replaced.",
            "Lapsed: do not drive", "Expired: do not drive"),
        new("out of date", "says what is so", "“out of date”", "See above.", "no longer says what is so", "out of date"),
        new("click", "[Ss]etting confirmed|confirmed the click", "“clicked at 110 N·m”", "One kind of record has one name.", "setting confirmed 110 N·m", "clicked at 110 N·m"),
        new("witness", @"looked at by (me|a second person)|second person looks at", "“witnessed”, “a witness checks”", "It is one act; the customer reads “checked by a second person”.",
            "WITNESS: looked at by me", "WITNESS: I checked these 5", "*.yaml"),
        new("cancel", @"Leave it\s*<|""Leave it""|Not now", "Cancel", "Beside a held nut, Leave it reads like use as is.", ">Leave it</button>", ">Cancel</button>"),
        new("edit", @"Change person|Change the (car|customer|option|wheel stack)\b|[Dd]escribe.* anew|>Give it<|End it now", "Edit, Switch user, Add, End now", "One word for one act.",
            "Describe it anew", "Edit details"),
        new("demo", @"[Ii]nvented (data|demo)|all of it (is )?invented", "“Demo data”", "One name for it, once a page.", "Invented data.", "Demo data."),
        new("stage", @"\b[Ss]tage \{[^}]*\}/\{|\b[Ss]tage \d/\d", "“stage 1 of 2”; 1/2 only on a chip", "Two ways to count one thing.", "stage 1/2", "stage 1 of 2"),
        new("options", "Differences only|Worst number|said only", "“What differs”, “claimed, not proven”", "What it is, not what the program does.", "Differences only", "What differs"),
        new("stop", @"[.!?]”\.|”\.”", "no stop after the closing quote", "A quoted sentence has its own.", "“It shook.”.", "“It shook.”"),
        new("translated", @"\banew\b|\breckoned\b|\bhangs on (a|its|the) (joint|tool)|speaks? against|spoke against|\bin vain\b", "“again”, “counted”, “depends on”, “is against”",
            "Nobody in a workshop speaks like that.", "nothing speaks against it", "there is nothing against it"),
    ];
}
