namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads what opening a joint or changing a setting undoes, and checks the names once all are known.</summary>
internal sealed class Consequences(ProblemsFound problems)
{
    private const string SettingMark = "setting:";
    private const string JointMark = "joint:";

    private readonly List<(DocumentNode Node, Undone Undone)> read = [];

    public IReadOnlyList<Undone> Read(DocumentNode node)
    {
        var found = new List<Undone>();
        foreach (var item in MapReader.ItemsOf(node, problems))
        {
            if (MapReader.TextOf(item, problems) is not { } text)
            {
                continue;
            }

            var undone = text.StartsWith(SettingMark, StringComparison.Ordinal) ? new Undone(UndoneKind.Setting, text[SettingMark.Length..])
                : text.StartsWith(JointMark, StringComparison.Ordinal) ? new Undone(UndoneKind.Joint, text[JointMark.Length..])
                : new Undone(UndoneKind.Result, text);
            found.Add(undone);
            read.Add((item, undone));
        }

        return found;
    }

    public void Check(IReadOnlyCollection<string> results, IReadOnlyCollection<string> settings, IReadOnlyDictionary<string, JointKind> kinds)
    {
        foreach (var (node, undone) in read)
        {
            var (what, known) = undone.Kind switch
            {
                UndoneKind.Setting => ("setting", settings),
                UndoneKind.Joint => ("joint kind", [.. kinds.Keys]),
                _ => ("result", results),
            };
            if (!known.Contains(undone.Name))
            {
                problems.Error(node, $"There is no {what} {Wording.Quote(undone.Name)} in this register", Wording.Nearest(undone.Name, known));
            }
        }
    }
}
