namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Collects everything found in one document.</summary>
internal sealed class ProblemsFound
{
    private readonly List<DocumentProblem> found = [];

    public ProblemsFound()
    {
    }

    /// <summary>Goes on from what was found already.</summary>
    public ProblemsFound(ProblemsFound before)
    {
        found.AddRange(before.found);
        Errors = before.Errors;
    }

    public int Errors { get; private set; }

    public IReadOnlyList<DocumentProblem> InOrder => [.. found.OrderBy(problem => problem.Line).ThenBy(problem => problem.Column)];

    public void Error(int line, int column, string path, string what, string next)
    {
        found.Add(new DocumentProblem(line, column, path, false, what, next));
        Errors++;
    }

    public void Error(DocumentNode at, string what, string next) => Error(at.Line, at.Column, at.Path, what, next);

    public void Caution(DocumentNode at, string what, string next) =>
        found.Add(new DocumentProblem(at.Line, at.Column, at.Path, true, what, next));

    public LoadedDocument<T> Close<T>(string name, byte[] bytes, T? value)
        where T : class => new(name, DocumentDigest.Of(bytes), Errors == 0 ? value : null, InOrder) { Draft = value };
}
