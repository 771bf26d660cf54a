namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads where a number comes from.</summary>
internal static class SourceReader
{
    private static readonly string[] Keys = ["document", "revision", "page", "basis", "decided-by", "why"];

    /// <summary>The source under this key, or null with the problem noted; where the key is absent, <paramref name="inherited"/>.</summary>
    public static Provenance? Read(MapReader map, Provenance? inherited)
    {
        if (!map.Has("source"))
        {
            return inherited;
        }

        if (MapReader.Of(map.At("source"), map.Problems, Keys) is not { } source)
        {
            return null;
        }

        var document = source.Text("document");
        var revision = source.Text("revision", 60);
        var page = source.Text("page", 60);
        var basis = source.Choice("basis", Vocabulary.Basis);
        var decidedBy = source.TextIfAny("decided-by", 60);
        var why = source.TextIfAny("why");
        if (basis == ProvenanceBasis.ShopDecision && (!source.Has("decided-by") || !source.Has("why")))
        {
            map.Problems.Error(source.Map, "A shop decision does not say who decided and why", "add “decided-by” and “why”");
            return null;
        }

        if (basis == ProvenanceBasis.Stated && (source.Has("decided-by") || source.Has("why")))
        {
            map.Problems.Error(source.Map, "A stated value has “decided-by” or “why”", "write “basis: shop decision”, or delete them");
            return null;
        }

        return document is null || revision is null || page is null || basis is null
            ? null
            : new Provenance(document, revision, page, basis.Value, decidedBy, why);
    }
}
