using System.Text;
using Ical.Net;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Summaries;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Data.Logbook;

namespace ShopJobs.Web.Tests.Summaries;

/// <summary>The calendar file against RFC 5545 (Internet Calendaring and Scheduling), by the sections named.</summary>
public sealed class ComeBackCalendarTests
{
    private static readonly DateTime At = new(2026, 3, 2, 9, 30, 0, DateTimeKind.Utc);
    private static readonly CarId Car = new(new Guid("6f9619ff-8b86-d011-b42d-00c04fc964ff"));

    /// <summary>Section 3.1: lines end with CR LF and are folded so that none is longer than 75 octets without its break.</summary>
    [Fact]
    public void Lines_end_with_CR_LF_and_hold_at_most_75_octets()
    {
        var file = File();

        Assert.EndsWith("\r\n", file, StringComparison.Ordinal);
        Assert.Equal(file.Count(letter => letter == '\n'), file.Split("\r\n").Length - 1);
        Assert.All(file.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.Contains(file.Split("\r\n"), line => line.StartsWith(' '));
    }

    /// <summary>Sections 3.4, 3.6, 3.7.3, 3.7.4: one calendar with its product and the version 2.0.</summary>
    [Fact]
    public void Is_a_calendar_of_version_two_that_says_who_made_it()
    {
        var lines = Unfolded(File());

        Assert.Equal(("BEGIN:VCALENDAR", "END:VCALENDAR"), (lines[0], lines[^1]));
        Assert.Single(lines, "VERSION:2.0");
        Assert.Single(lines, line => line.StartsWith("PRODID:", StringComparison.Ordinal));
    }

    /// <summary>Section 3.6.1: an event has UID and DTSTAMP (3.8.4.7, 3.8.7.2, in UTC by 3.3.5); DTSTART of a whole day is a DATE (3.3.4).</summary>
    [Fact]
    public void The_event_is_the_whole_last_day_with_an_identity_and_a_stamp()
    {
        var lines = Unfolded(File());

        Assert.Single(lines, "DTSTART;VALUE=DATE:20261229");
        Assert.Single(lines, "DTSTAMP:20260302T093000Z");
        Assert.Single(lines, line => line.StartsWith("UID:", StringComparison.Ordinal) && Guid.TryParse(line["UID:".Length..], out _));
        Assert.Single(lines, "SEQUENCE:1");
        Assert.DoesNotContain(Car.Value.ToString(), File(), StringComparison.Ordinal);
    }

    /// <summary>Section 3.3.11: comma, semicolon, backslash and line break in a text are escaped.</summary>
    [Fact]
    public void Texts_are_escaped_and_read_back_as_they_were()
    {
        var file = File(SheetDriveTests.Page with { Car = new SummaryCar("Blue; \"fast\", \\ one", "", "") });

        Assert.Contains(Unfolded(file), line => line.StartsWith("SUMMARY:Last day: Blue\\; \"fast\"\\, \\\\ one to Ninth Bay\\, to re-tighten all 20 wheel nuts", StringComparison.Ordinal));
        Assert.Equal(
            "Last day: Blue; \"fast\", \\ one to Ninth Bay, to re-tighten all 20 wheel nuts", Assert.Single(Calendar.Load(file)!.Events).Summary);
    }

    /// <summary>Section 3.6.6: an alarm that is displayed has ACTION, DESCRIPTION and TRIGGER; a duration of seven days is P7D or P1W (3.3.6).</summary>
    [Fact]
    public void Reminds_a_week_before()
    {
        var lines = Unfolded(File());

        Assert.Single(lines, "ACTION:DISPLAY");
        Assert.Single(lines, line => line is "TRIGGER:-P7D" or "TRIGGER:-P1W");
    }

    [Fact]
    public void A_newer_version_moves_the_same_entry()
    {
        var (first, second) = (Unfolded(File()), Unfolded(File(SheetDriveTests.Page with { Version = 2 }, version: 2)));

        Assert.Equal(Uid(first), Uid(second));
        Assert.Single(second, "SEQUENCE:2");
    }

    [Fact]
    public void There_is_none_without_a_day_and_none_of_what_is_no_longer_so()
    {
        Assert.Null(Of(SheetDriveTests.Page with { ComeBacks = null }, new SummaryStanding.Current()));
        Assert.Null(Of(SheetDriveTests.Page with { ComeBacks = [new ComeBack("all", "after 50 km", null)] }, new SummaryStanding.Current()));
        Assert.Null(Of(SheetDriveTests.Page, new SummaryStanding.Overtaken(At, [], [], Grave: true) { NoLonger = [ReleaseKind.Road] }));
        Assert.Null(Of(SheetDriveTests.Page, new SummaryStanding.Replaced(2, At)));
    }

    private static string Uid(List<string> lines) => Assert.Single(lines, line => line.StartsWith("UID:", StringComparison.Ordinal));

    private static List<string> Unfolded(string file) => [.. file.Replace("\r\n ", "", StringComparison.Ordinal).TrimEnd().Split("\r\n")];

    private static string File(WorkSummary? page = null, int version = 1) => Of(page ?? SheetDriveTests.Page, new SummaryStanding.Current(), version)!;

    private static string? Of(WorkSummary page, SummaryStanding standing, int version = 1) => ComeBackCalendar.Of(Car, new IssuedVersion(
        new SummaryBook(1, At, new SummaryIssued(version, null, ContentDigest.Of([1], Encoding.UTF8.GetBytes("page")), 0, "00")),
        standing, new StoredContent.Present(SummaryText.Write(page)), false));
}
