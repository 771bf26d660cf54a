using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Summaries;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>The days on which the car has to be back, as a calendar file (RFC 5545): a whole day each, with a reminder a week before.</summary>
internal static class ComeBackCalendar
{
    public const string MediaType = "text/calendar; charset=utf-8";

    private const int DaysOfNotice = 7;

    /// <summary>Where the customer's link has it.</summary>
    public static string Path(string link, int version) => string.Create(CultureInfo.InvariantCulture, $"{link}/calendar.ics?version={version}");

    /// <summary>The file of a version; null where it has no day to come back by, or says what is no longer so.</summary>
    public static string? Of(CarId car, IssuedVersion version)
    {
        var days = version is { IsOutOfDate: false, NoLonger.Count: 0, Page.ComeBacks: { } all } ? all.Where(back => back.By is not null).ToList() : [];
        if (days.Count == 0)
        {
            return null;
        }

        var calendar = new Ical.Net.Calendar { ProductId = "-//ShopJobs//Work summary//EN", Method = "PUBLISH" };
        calendar.Events.AddRange(days.Select(back => Event(car, version, version.Page!, back)));
        return new CalendarSerializer().SerializeToString(calendar);
    }

    private static CalendarEvent Event(CarId car, IssuedVersion version, WorkSummary page, ComeBack back)
    {
        var summary = $"Last day: {page.Car.Name} to {page.Shop.Name}, to re-tighten {back.What}";
        var day = new CalendarEvent
        {
            Uid = Uid(car, back.What).ToString(),
            Sequence = version.Version,
            DtStamp = new CalDateTime(version.Book.At, "UTC"),
            DtStart = new CalDateTime(back.By!.Value),
            Summary = summary,
            Description = $"Come back {back.When}. {page.Shop.Contact}",
            Transparency = Ical.Net.TransparencyType.Transparent,
        };
        day.Alarms.Add(new Alarm { Action = Ical.Net.AlarmAction.Display, Description = summary, Trigger = new Trigger(Duration.FromDays(-DaysOfNotice)) });
        return day;
    }

    /// <summary>The same for every version, so that a newer one moves the entry of an older; a UUID of version 8 (RFC 9562, section 5.8) by a hash, which gives no id away.</summary>
    private static Guid Uid(CarId car, string what)
    {
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes($"{car.Value:N} {what}"))[..16];
        bytes[6] = (byte)((bytes[6] & 0x0F) | 0x80);
        bytes[8] = (byte)((bytes[8] & 0x3F) | 0x80);
        return new Guid(bytes, bigEndian: true);
    }
}
