using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.SecondPersons;

/// <summary>Who is nobody's second person although he did none of the work.</summary>
internal static class SecondPersonRules
{
    private const string Tied =
        "Nobody is the second person for somebody who enrolled him, gave him his right or reset his PIN, until a third confirms";

    private const string Shown = "with no third in the shop it is shown on release and summary";

    public static RuleBook<TiedPair> Book() => Faults(
        new RuleBook<TiedPair>("A second person of one's own making", new TiedPair { Third = true }, pair => pair.ToString())
            .Action("Ann has with Bob", TiedPair.Ties, (pair, tie) => pair.Tie != tie || pair.Confirmed, (pair, tie) => pair.Bind(tie))
            .Action("Confirm Bob", Persons.Each, (pair, person) => pair is { Tie: not Tie.None, Confirmed: false } && (person != People.Cy || pair.Third), (pair, person) => pair.Confirm(person))
            .Action("Cy joins or leaves", _ => true, pair => pair.Changes())
            .Action("Be the second person", Pair.All, (pair, of) => pair.Third || (of.Doer != People.Cy && of.Second != People.Cy), (pair, of) => pair.Ask(of))
            .On("Be the second person", "4", "NOT-FOR-HIS-MAKER", Tied,
                (before, after) => before is { Third: true, Confirmed: false, Tie: not Tie.None } && after.Asked == new Pair(People.Ann, People.Bob), (_, after) => !after.Granted)
            .On("Be the second person", "4", "NEVER-ONESELF", "A witness is nobody who recorded",
                (_, after) => after.Asked.Doer == after.Asked.Second, (_, after) => !after.Granted)
            .On("Be the second person", "4", "ANYBODY-ELSE", Tied,
                (before, after) => after.Asked.Doer != after.Asked.Second && !before.Tied(after.Asked), (_, after) => after is { Granted: true, Shown: false })
            .On("Be the second person", "4", "SHOWN-IN-A-SHOP-OF-TWO", Shown,
                (before, after) => !before.Third && before.Tied(after.Asked), (_, after) => after is { Granted: true, Shown: true })
            .On("Confirm Bob", "4", "BY-A-THIRD", "until a third confirms", (before, after) => after.Confirmed && !before.Confirmed, (before, _) => before.Third)
            .On("Ann has with Bob", "4", "TIED-ANEW", Tied, (before, _) => before.Confirmed, (_, after) => !after.Confirmed)
            .Ends("4", "CONFIRMED-BY-CY", "A technician the lead enrolled witnesses him once a third has confirmed",
                pair => pair is { Tie: Tie.Enrolled, Confirmed: true, Granted: true, Asked: { Doer: People.Ann, Second: People.Bob } })
            .Ends("4", "SHOP-OF-TWO", "A lead and one technician: it is done, and said", pair => pair is { Third: false, Shown: true }));

    private static RuleBook<TiedPair> Faults(RuleBook<TiedPair> book) => book
        .Fault("a lead who enrolled or reset the second person is witnessed by him", "NOT-FOR-HIS-MAKER", "Be the second person",
            (before, after) => before.Third && before.Tied(after.Asked), (_, pair) => pair with { Granted = true })
        .Fault("a person is his own second", "NEVER-ONESELF", "Be the second person",
            (_, after) => after.Asked.Doer == after.Asked.Second, (_, pair) => pair with { Granted = true })
        .Fault("whoever is tied once is nobody's second person", "ANYBODY-ELSE", "Be the second person",
            (before, after) => before.Tie != Tie.None && after.Asked is { Doer: People.Cy, Second: People.Bob }, (_, pair) => pair with { Granted = false })
        .Fault("a shop of two says nothing of it", "SHOWN-IN-A-SHOP-OF-TWO", "Be the second person",
            (_, after) => after.Shown, (_, pair) => pair with { Shown = false })
        .Fault("the two of them confirm each other", "BY-A-THIRD", "Confirm Bob",
            (before, _) => !before.Third, (_, pair) => pair with { Confirmed = true })
        .Fault("a PIN reset after the confirmation binds nobody", "TIED-ANEW", "Ann has with Bob",
            (before, _) => before.Confirmed, (_, pair) => pair with { Confirmed = true });
}
