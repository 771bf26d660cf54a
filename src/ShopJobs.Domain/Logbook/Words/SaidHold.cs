namespace ShopJobs.Domain.Logbook;

/// <summary>A reason in words.</summary>
/// <param name="Words">What is wrong, on which fastener.</param>
/// <param name="Next">What to do next.</param>
public sealed record SaidHold(string Words, string Next)
{
    public override string ToString() => $"{Words}: {Next}";
}
