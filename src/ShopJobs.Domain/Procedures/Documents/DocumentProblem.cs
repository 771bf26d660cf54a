namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>One thing wrong with a document, or to be watched, at its place in the text.</summary>
/// <param name="Line">Counted from 1.</param>
/// <param name="Column">Counted from 1.</param>
/// <param name="Path">The same place in words of the document, such as <c>groups[2].stages[1].value</c>, counted from 1; empty for the whole.</param>
/// <param name="IsCaution">False: the document is not taken. True: it is taken, and the caution is shown.</param>
/// <param name="What">What is wrong.</param>
/// <param name="Next">What to do about it.</param>
public sealed record DocumentProblem(int Line, int Column, string Path, bool IsCaution, string What, string Next)
{
    /// <summary><c>line:column: error: path: what — next</c>.</summary>
    public override string ToString() =>
        $"{Line}:{Column}: {(IsCaution ? "caution" : "error")}: {(Path.Length > 0 ? Path + ": " : "")}{What} — {Next}";
}
