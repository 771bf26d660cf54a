using System.Text;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.WebUtilities;
using Microsoft.Extensions.Primitives;
using Microsoft.Net.Http.Headers;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Photos;

/// <summary>What the form of a photograph sent: its fields, and the file up to its limit.</summary>
internal sealed class SentPhoto
{
    public const string CommandField = "command";
    public const string ViewField = "view";
    public const string CaptionField = "caption";
    public const string FileField = "photo";

    /// <summary>Most letters of a caption.</summary>
    public const int CaptionLength = 120;

    /// <summary>Most bytes of a whole form: the file, and room for the fields around it.</summary>
    public const long MostBytes = Picture.MostBytes + (64 * 1024);

    private const int MostFieldBytes = 8 * 1024;
    private const int MostFields = 8;
    private readonly Dictionary<string, StringValues> fields = new(StringComparer.Ordinal);

    private SentPhoto()
    {
    }

    /// <summary>The file; empty where none was picked.</summary>
    public byte[] File { get; private set; } = [];

    /// <summary>Why it could not be read; null where it was.</summary>
    public PhotoRefusal? Refusal { get; private set; }

    /// <summary>Made by whoever sends it, the same on each retry; null where it is none.</summary>
    public CommandId? Command => Guid.TryParse(fields.GetValueOrDefault(CommandField), out var id) && id != Guid.Empty ? new CommandId(id) : null;

    /// <summary>True where the view is left out, or one of the eight by its name.</summary>
    public bool KnowsItsView => fields.GetValueOrDefault(ViewField).ToString() is var name && (name.Length == 0 || View is not null);

    /// <summary>From where the car is shown; null for any other photograph.</summary>
    public CarView? View => Enum.GetNames<CarView>().Contains(fields.GetValueOrDefault(ViewField).ToString(), StringComparer.Ordinal)
        ? Enum.Parse<CarView>(fields[ViewField].ToString())
        : null;

    /// <summary>What it shows, in words; empty where nothing was written.</summary>
    public string Caption => Typed.Clean(fields.GetValueOrDefault(CaptionField));

    /// <summary>Reads the form. Of a file over the limit no more is read than the limit.</summary>
    public static async Task<SentPhoto> ReadAsync(HttpRequest request, CancellationToken cancellation)
    {
        var sent = new SentPhoto();
        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = MostBytes;
        }

        try
        {
            sent.Refusal = BoundaryOf(request) is { } boundary ? await sent.ReadAsync(new MultipartReader(boundary, request.Body), cancellation) : PhotoRefusal.NotWhole;
        }
        catch (BadHttpRequestException e) when (e.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            sent.Refusal = PhotoRefusal.TooLarge;
        }
        catch (Exception e) when (e is InvalidDataException or IOException)
        {
            // Cut off on its way, or no form: said to whoever sent it.
            sent.Refusal = PhotoRefusal.NotWhole;
        }

        request.Form = new FormCollection(sent.fields);
        return sent;
    }

    private static string? BoundaryOf(HttpRequest request) =>
        MediaTypeHeaderValue.TryParse(request.ContentType, out var type) && type.MediaType.Equals("multipart/form-data", StringComparison.OrdinalIgnoreCase)
        && HeaderUtilities.RemoveQuotes(type.Boundary).Value is { Length: > 0 and <= 70 } boundary
            ? boundary
            : null;

    private async Task<PhotoRefusal?> ReadAsync(MultipartReader form, CancellationToken cancellation)
    {
        for (var read = 0; await form.ReadNextSectionAsync(cancellation) is { } section; read++)
        {
            var name = ContentDispositionHeaderValue.TryParse(section.ContentDisposition, out var said) ? HeaderUtilities.RemoveQuotes(said.Name).Value : null;
            if (name is null || read >= MostFields)
            {
                return PhotoRefusal.NotWhole;
            }

            var isFile = name == FileField;
            if (await ReadAsync(section.Body, isFile ? Picture.MostBytes : MostFieldBytes, cancellation) is not { } bytes)
            {
                return isFile ? PhotoRefusal.TooLarge : PhotoRefusal.LongCaption;
            }

            if (isFile)
            {
                File = bytes;
            }
            else
            {
                fields[name] = Encoding.UTF8.GetString(bytes);
            }
        }

        return Caption.Length > CaptionLength ? PhotoRefusal.LongCaption : null;
    }

    // Null where there is more.
    private static async Task<byte[]?> ReadAsync(Stream body, int most, CancellationToken cancellation)
    {
        using var kept = new MemoryStream();
        var some = new byte[64 * 1024];
        int count;
        while ((count = await body.ReadAsync(some, cancellation)) > 0)
        {
            if (kept.Length + count > most)
            {
                return null;
            }

            kept.Write(some, 0, count);
        }

        return kept.ToArray();
    }
}
