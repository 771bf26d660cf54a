namespace ShopJobs.Web.Accounts;

/// <summary>What came of asking for a signature.</summary>
public abstract record SignatureAnswer
{
    private SignatureAnswer()
    {
    }

    public sealed record Signed(SignatureProof Proof) : SignatureAnswer;

    /// <summary>Not signed, and what to do next.</summary>
    public sealed record Refused(string Words) : SignatureAnswer;
}
