namespace ShopJobs.Web.Data.Logbook;

/// <summary>One table, index or trigger that a database lacks or has otherwise.</summary>
/// <param name="Type">"table", "index" or "trigger".</param>
/// <param name="What">What is the matter with it.</param>
internal sealed record SchemaDifference(string Type, string Name, string What)
{
    /// <summary>Its tables can't be relied on.</summary>
    public bool IsOfTable => Type == "table";

    public override string ToString() => $"{Type} {Name} {What}";
}
