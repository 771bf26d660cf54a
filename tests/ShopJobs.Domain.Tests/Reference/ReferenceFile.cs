namespace ShopJobs.Domain.Tests.Reference;

/// <summary>
/// How the rows of one file are checked: which kind a row is of, by its content and never by its id, and what each kind is compared with.
/// </summary>
/// <param name="Folder">Sub-folder.</param>
/// <param name="Name">File name.</param>
/// <param name="KindOf">The kind of a row, as its file names it.</param>
/// <param name="CheckOf">The check of a kind; null where there is none.</param>
/// <param name="Checked">The columns of a row whose figures or words are checked.</param>
internal sealed record ReferenceFile(
    string Folder, string Name, Func<ReferenceRow, string> KindOf, Func<string, Action<ReferenceRow>?> CheckOf, Func<ReferenceRow, string[]> Checked)
{
    public IReadOnlyList<ReferenceRow> Rows() => ReferenceFolder.Read(Folder, Name);

    /// <summary>
    /// Checks a row against the domain. Fails on a mismatch, on a row that holds what its kind has not, and on a kind that is neither
    /// mapped nor listed as not covered.
    /// </summary>
    public void Check(ReferenceRow row)
    {
        var kind = KindOf(row);
        if (CheckOf(kind) is { } check)
        {
            check(row);
            return;
        }

        Assert.True(
            NotCovered.Reason(Name, kind) is not null && row.Evidence != "seen",
            $"{row.Id}: nothing checks \"{kind}\" of {Name}. Source: {row.Source}");
    }

    public bool Maps(ReferenceRow row) => CheckOf(KindOf(row)) is not null;
}
