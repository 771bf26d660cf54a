namespace ShopJobs.Domain.Procedures;

/// <summary>Something written down beside the values of a result: a grade, a batch, the day a bottle was opened.</summary>
/// <param name="Id">Id inside the result.</param>
/// <param name="Text">What is written down.</param>
/// <param name="OneOf">The only answers taken; empty where any short text is.</param>
/// <param name="IsDay">True where it is a day, written year-month-day.</param>
public sealed record ResultNote(string Id, string Text, IReadOnlyList<string> OneOf, bool IsDay);

/// <summary>One kind of result or setting that the register names.</summary>
/// <param name="Key">Its short name; a setting's begins with <c>setting:</c>.</param>
/// <param name="Name">What people call it.</param>
public sealed record ResultKind(string Key, string Name)
{
    private const string SettingPrefix = "setting:";

    /// <summary>Its values with their limits, each needed; empty where the register names none and the step says what is measured.</summary>
    public IReadOnlyList<Measure> Measures { get; init; } = [];

    /// <summary>What is written down beside them, each needed.</summary>
    public IReadOnlyList<ResultNote> Notes { get; init; } = [];

    /// <summary>True where it is measured with a gauge, scales or a rig of the shop's, which is then named.</summary>
    public bool NeedsInstrument { get; init; }

    /// <summary>True where it can only be had by driving: a bed-in, a road check.</summary>
    public bool AfterDrive { get; init; }

    /// <summary>True where the car is not even rolled by hand before it stands: a pedal that nobody has held.</summary>
    public bool HoldsMove { get; init; }

    /// <summary>True where each place has its own; its name then ends with the place: <c>run-out@front-left</c>.</summary>
    public bool OfPlace { get; init; }

    /// <summary>True for a setting: recording it again fires what it undoes.</summary>
    public bool IsSetting => Key.StartsWith(SettingPrefix, StringComparison.Ordinal);

    /// <summary>The name that a record of it has at a place.</summary>
    public string At(string? place) => OfPlace && place is not null ? $"{Key}@{place}" : Key;

    /// <summary>The key of a record's name, and the place where it has one.</summary>
    public static (string Key, string? Place) Split(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name.IndexOf('@', StringComparison.Ordinal) is > 0 and var at ? (name[..at], name[(at + 1)..]) : (name, null);
    }

    /// <summary>A kind of which only the name is known.</summary>
    public static ResultKind Bare(string key)
    {
        ArgumentNullException.ThrowIfNull(key);
        return new ResultKind(key, key.Replace(SettingPrefix, "setting ", StringComparison.Ordinal).Replace('-', ' '));
    }
}
