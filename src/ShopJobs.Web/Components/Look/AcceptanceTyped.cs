using System.Globalization;
using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Components.Look;

/// <summary>Words of somebody outside the shop as they are typed: who, when, how.</summary>
public sealed class AcceptanceTyped
{
    public string Who { get; set; } = "";

    /// <summary>The day, as a date field gives it: 2026-03-02.</summary>
    public string Day { get; set; } = "";

    public SaidHow? How { get; set; }

    public string KeptAt { get; set; } = "";

    public string Words { get; set; } = "";

    /// <summary>Anything of it was typed.</summary>
    public bool IsBegun => How is not null || (Who + Day + KeptAt + Words).Trim().Length > 0;

    /// <summary>What the domain is asked about.</summary>
    public Acceptance Read() => new(
        Typed.Clean(Who),
        DateOnly.TryParseExact(Day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null,
        How,
        Typed.Clean(KeptAt),
        Typed.Clean(Words));

    /// <summary>The acceptance with its text, to be kept beside the entry.</summary>
    public static (Acceptance Acceptance, NewContent Text) Keep(Acceptance said)
    {
        ArgumentNullException.ThrowIfNull(said);
        var text = NewContent.Of(Encoding.UTF8.GetBytes(said.Text()));
        return (said with { Kept = text.Digest }, text);
    }
}
