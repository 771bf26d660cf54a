namespace ShopJobs.Web.Accounts;

/// <summary>What came of a PIN at a locked tablet.</summary>
public abstract record UnlockAnswer
{
    private UnlockAnswer()
    {
    }

    /// <summary>The same session goes on; what was typed is still on the page.</summary>
    public sealed record GoOn : UnlockAnswer;

    /// <summary>Another person, or a session that is over: the whole sign-in is needed, and a new page.</summary>
    public sealed record SignIn : UnlockAnswer;

    /// <summary>Not unlocked, and what to do next.</summary>
    public sealed record No(string Words) : UnlockAnswer;
}
