using System.Globalization;
using System.Text;
using CsCheck;

namespace ShopJobs.Domain.Tests.Specification;

/// <summary>
/// One question of the gate as an executable specification: what may happen, what must hold in the words of the rule it comes from,
/// which courses must come to an end, and planted defects, each with the requirement that must catch it.
/// </summary>
/// <param name="title">The question in a few words.</param>
/// <param name="start">The state everything starts from.</param>
internal sealed class Sheet<T>(string title, T start)
    where T : notnull
{
    private readonly List<(string Id, string Sentence)> requirements = [];
    private readonly List<(string Id, string Words)> courses = [];
    private readonly List<(string Name, string CaughtBy)> defects = [];

    public string Title { get; } = title;

    public Spec<T> Spec { get; } = CsCheck.Spec.From(start);

    /// <summary>Planted defects and the requirement that must catch each.</summary>
    public IReadOnlyList<(string Name, string CaughtBy)> Defects => defects;

    public Sheet<T> May(string action, Func<T, bool> when, Func<T, T> apply)
    {
        Spec.Action(action, when, apply);
        return this;
    }

    public Sheet<T> May<TArgument>(string action, TArgument[] arguments, Func<T, TArgument, bool> when, Func<T, TArgument, T> apply)
    {
        Spec.Action(action, arguments, when, apply);
        return this;
    }

    /// <summary>Where the first holds over a step, the second must.</summary>
    public Sheet<T> Must(string id, string sentence, Func<T, T, bool> when, Func<T, T, bool> then)
    {
        requirements.Add((id, sentence));
        Spec.Rule(id, sentence, when, then);
        return this;
    }

    /// <summary>Where the first holds over a step of the action, the second must.</summary>
    public Sheet<T> MustOn(string action, string id, string sentence, Func<T, T, bool> when, Func<T, T, bool> then)
    {
        requirements.Add((id, sentence));
        Spec.Rule(id, sentence, action, when, then);
        return this;
    }

    /// <summary>An honest course that must be able to come to this end.</summary>
    public Sheet<T> Honest(string id, string words, Func<T, bool> end)
    {
        courses.Add((id, words));
        Spec.Reachable(id, words, end);
        return this;
    }

    /// <summary>A defect, or a careless or dishonest course gone through, that the named requirement must catch.</summary>
    public Sheet<T> Defect(string name, string caughtBy, string action, Func<T, T, bool> when, Func<T, T, T> apply)
    {
        defects.Add((name, caughtBy));
        Spec.Fault(name, action, when, apply);
        return this;
    }

    /// <summary>The specification as a table in Markdown: each requirement, its sentence and the defects it catches.</summary>
    public string Table()
    {
        var text = new StringBuilder();
        text.Append("### ").AppendLine(Title).AppendLine();
        text.AppendLine("| requirement | the rule's words | defects it catches |").AppendLine("|---|---|---|");
        foreach (var (id, sentence) in requirements)
        {
            var caught = string.Join("; ", defects.Where(defect => defect.CaughtBy == id).Select(defect => defect.Name));
            text.AppendLine(CultureInfo.InvariantCulture, $"| {id} | {sentence} | {caught} |");
        }

        text.AppendLine().AppendLine("| course | must be able to end |").AppendLine("|---|---|");
        foreach (var (id, words) in courses)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"| {id} | {words} |");
        }

        return text.ToString();
    }
}
