namespace ShopJobs.Web.Accounts;

/// <summary>What came of looking at a PIN.</summary>
public abstract record PinAnswer
{
    private PinAnswer()
    {
    }

    public sealed record Right : PinAnswer;

    /// <summary>No, and what to do next.</summary>
    public sealed record No(string Words) : PinAnswer;
}
