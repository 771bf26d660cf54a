namespace ShopJobs.Domain.Procedures;

/// <summary>How a number came to stand in a procedure.</summary>
public enum ProvenanceBasis
{
    /// <summary>The document says it.</summary>
    Stated,

    /// <summary>The shop chose it; who and why stand beside it.</summary>
    ShopDecision,
}

/// <summary>Where a number comes from. No number of a procedure is accepted without one.</summary>
/// <param name="Document">The maker's instruction or other paper.</param>
/// <param name="Revision">Its revision as printed.</param>
/// <param name="Page">Page, sheet or clause.</param>
/// <param name="Basis">Stated there, or decided by the shop.</param>
/// <param name="DecidedBy">Role of the person who decided; only with a shop decision.</param>
/// <param name="Why">The reason in one sentence; only with a shop decision.</param>
public sealed record Provenance(
    string Document, string Revision, string Page, ProvenanceBasis Basis, string? DecidedBy = null, string? Why = null)
{
    public override string ToString() => Basis == ProvenanceBasis.Stated
        ? $"{Document}, rev. {Revision}, {Page}: stated"
        : $"{Document}, rev. {Revision}, {Page}: decided by {DecidedBy}, {Why}";
}
