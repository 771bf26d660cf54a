using System.Text.Json;

namespace ShopJobs.Web.Components.CustomerData;

/// <summary>Everything the shop holds about a customer, as it is given out: in UTC, with nothing of other customers.</summary>
public sealed record CustomerFile(int Format, string Shop, DateTime WrittenAt, FileCustomer Customer, IReadOnlyList<FileCar> Cars);

/// <summary>The customer's row.</summary>
public sealed record FileCustomer(string Name, string Contact, DateTime ChangedAt, DateTime? ErasedAt);

/// <summary>A car that is or was the customer's. What is known of it today stands only in the file of today's owner.</summary>
public sealed record FileCar(
    string Name,
    string Model,
    string? Mark,
    string? Chassis,
    string? Colour,
    string? Note,
    DateTime? From,
    DateTime? Until,
    IReadOnlyList<FileJob> Jobs,
    IReadOnlyList<FileVisit> Visits,
    IReadOnlyList<FileSummary> Summaries,
    IReadOnlyList<FileText> Acceptances,
    IReadOnlyList<FileText> ToldOfDoubts,
    IReadOnlyList<FileLink> Links,
    IReadOnlyList<FilePhoto> Photographs);

/// <summary>Work that was asked for.</summary>
public sealed record FileJob(string Title, string Places, string AskedFor, DateTime StartedAt);

/// <summary>A stay of the car in the shop.</summary>
public sealed record FileVisit(
    DateTime? CameIn, string? OdometerIn, string? WhyItCame, DateTime? Left, string? OdometerOut, string? Way, string? TakenBy);

/// <summary>A summary as it was issued; null where it was erased. And when and with what words it was confirmed.</summary>
public sealed record FileSummary(int Version, DateTime IssuedAt, JsonElement? Page, DateTime? ConfirmedAt, string? ConfirmedWith);

/// <summary>A text beside an entry of a logbook.</summary>
public sealed record FileText(DateTime At, string Text);

/// <summary>A link that was made for the customer. Its secret is not kept.</summary>
public sealed record FileLink(DateTime MadeAt, DateTime OpensUntil, DateTime? EndedAt);

/// <summary>A photograph of the car; without its picture where that was erased.</summary>
/// <param name="View">From where it shows the car; null for a photograph of anything else.</param>
/// <param name="Jpeg">The picture, in base64.</param>
public sealed record FilePhoto(DateTime At, string? View, string? Caption, byte[]? Jpeg);
