using CsCheck;

namespace ShopJobs.Domain.Tests.Specification.Proof;

/// <summary>
/// A specification with what a reader asks of it: which sentence of which rule each requirement quotes, and which requirement
/// has to catch which fault. Made afresh for each proof.
/// </summary>
internal sealed class RuleBook<T>(string title, T start, Func<T, string> print)
{
    public string Title { get; } = title;

    public Spec<T> Spec { get; } = CsCheck.Spec.From(start).Print(print);

    public List<Sentence> Sentences { get; } = [];

    public List<Defect> Defects { get; } = [];

    public RuleBook<T> Action(string name, Func<T, bool> when, Func<T, T> apply) => With(Spec.Action(name, when, apply));

    public RuleBook<T> Action<TArg>(string name, TArg[] of, Func<T, TArg, bool> when, Func<T, TArg, T> apply) =>
        With(Spec.Action(name, of, when, apply));

    /// <summary>States where nothing more happens on purpose.</summary>
    public RuleBook<T> Rests(Func<T, bool> when) => With(Spec.Terminal(when));

    /// <summary>Holds in every state.</summary>
    public RuleBook<T> Always(string rule, string id, string words, Func<T, bool> holds) =>
        With(Spec.Invariant(id, words, holds), rule, id, words);

    /// <summary>Holds over each step of the named kind.</summary>
    public RuleBook<T> On(string action, string rule, string id, string words, Func<T, T, bool> when, Func<T, T, bool> then) =>
        With(Spec.Rule(id, words, action, when, then), rule, id, words);

    /// <summary>Whenever the first holds over a step, the second does too.</summary>
    public RuleBook<T> Whenever(string rule, string id, string words, Func<T, T, bool> when, Func<T, T, bool> then) =>
        With(Spec.Rule(id, words, when, then), rule, id, words);

    /// <summary>An honest course: its end can be reached.</summary>
    public RuleBook<T> Ends(string rule, string id, string words, Func<T, bool> holds) =>
        With(Spec.Reachable(id, words, holds), rule, id, words);

    /// <summary>A fault on steps of the named kind, to be caught by the requirement written for it.</summary>
    public RuleBook<T> Fault(string name, string caughtBy, string action, Func<T, T, bool> when, Func<T, T, T> perturb)
    {
        Defects.Add(new Defect(name, caughtBy));
        return With(Spec.Fault(name, action, when, perturb));
    }

    private RuleBook<T> With(Spec<T> _, string rule, string id, string words)
    {
        Sentences.Add(new Sentence(rule, id, words));
        return this;
    }

    private RuleBook<T> With(Spec<T> _) => this;
}
