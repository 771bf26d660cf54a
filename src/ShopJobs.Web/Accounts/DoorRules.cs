namespace ShopJobs.Web.Accounts;

/// <summary>How long a person stays signed in. Section "Door" of the settings.</summary>
public sealed class DoorRules
{
    /// <summary>Minutes without a touch after which the tablet locks.</summary>
    public int IdleMinutes { get; set; } = 15;

    /// <summary>Hours after which a session ends whatever happens.</summary>
    public int SessionHours { get; set; } = 12;

    public TimeSpan Idle => TimeSpan.FromMinutes(IdleMinutes);

    public TimeSpan Longest => TimeSpan.FromHours(SessionHours);
}
