namespace ShopJobs.Tests.Shared;

/// <summary>A clock that somebody sets; the count of time beside it goes on.</summary>
public sealed class ClockSetByHand(TimeProvider time) : TimeProvider
{
    /// <summary>By how much it is wrong.</summary>
    public TimeSpan Off { get; set; }

    public override long TimestampFrequency => time.TimestampFrequency;

    public override DateTimeOffset GetUtcNow() => time.GetUtcNow() + Off;

    public override long GetTimestamp() => time.GetTimestamp();

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        time.CreateTimer(callback, state, dueTime, period);
}
