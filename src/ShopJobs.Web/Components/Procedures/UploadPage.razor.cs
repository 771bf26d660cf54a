using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>An author hands in documents. Works without a circuit.</summary>
public sealed partial class UploadPage(ProcedureImport import, ImportLook look, SecondLook second, WhoIsHere who)
{
    private const int MostFiles = 20;

    private const string SeenField = "seen";
    private const string NameField = "kept-name";
    private const string BytesField = "kept";

    // As base64 in a hidden field a document is a third longer, and the whole has to pass the limit of an upload again.
    private const long MostKept = UploadLimit.MostBytes * 7 / 10;

    private List<DocumentFile> files = [];
    private ImportEffect? effect;
    private ImportReport? report;
    private IReadOnlyList<PeopleShelf.Named> seconds = [];
    private string? refusal;

    [CascadingParameter]
    private HttpContext Http { get; set; } = default!;

    [SupplyParameterFromQuery(Name = "tooLarge")]
    private bool TooLarge { get; set; }

    private string? Refusal => refusal
        ?? (TooLarge && report is null ? "The upload was larger than 4 MB, or did not say its size, and was not read. Nothing was imported." : null);

    private async Task ImportAsync()
    {
        if (await who.ActingAsync(Http.RequestAborted) is not { } present || !present.May(Right.Author))
        {
            refusal = "Importing needs the author's right. Ask the lead for it under People and places.";
            return;
        }

        files = Kept() ?? await UploadedAsync();
        if (files.Count is 0 or > MostFiles)
        {
            refusal = files.Count == 0 ? "No file was chosen. Choose at least one." : $"At most {MostFiles} files are taken at once.";
            return;
        }

        // A register is taken in as it was looked at: where the shop changed meanwhile, its effect is shown again.
        effect = await look.AtAsync(files, Http.RequestAborted);
        if (effect is null || effect.Mark == Http.Request.Form[SeenField])
        {
            await TakeInAsync(present);
        }
        else if (effect.TakesAway)
        {
            seconds = await second.OfferedAsync(present, Http.RequestAborted);
        }
    }

    // What takes joints away from cars is taken in by the lead and a second person who looked.
    private async Task TakeInAsync(Present present)
    {
        PersonId? looked = null;
        if (effect is { TakesAway: true })
        {
            (looked, refusal) = await second.AskAsync(present, Http.Request.Form, effect.Mark, Http.RequestAborted);
            seconds = await second.OfferedAsync(present, Http.RequestAborted);
            if (looked is null)
            {
                return;
            }
        }

        effect = null;
        report = await import.ImportAsync(files, present.Person, looked, Http.RequestAborted);
    }

    private bool TooMuchToKeep => files.Sum(file => (long)file.Bytes.Length) > MostKept;

    private async Task<List<DocumentFile>> UploadedAsync()
    {
        var read = new List<DocumentFile>();
        foreach (var upload in Http.Request.Form.Files.GetFiles("documents").Take(MostFiles + 1))
        {
            await using var content = upload.OpenReadStream();
            read.Add(await DocumentFile.ReadAsync(Path.GetFileName(upload.FileName), content, Http.RequestAborted));
        }

        return read;
    }

    /// <summary>The files that the page kept while somebody looked; null where there are none, or they can't be read.</summary>
    private List<DocumentFile>? Kept()
    {
        var (names, texts) = (Http.Request.Form[NameField], Http.Request.Form[BytesField]);
        if (names.Count == 0 || names.Count != texts.Count || names.Count > MostFiles)
        {
            return null;
        }

        var kept = new List<DocumentFile>();
        foreach (var (name, text) in names.Zip(texts))
        {
            var bytes = new byte[(text ?? "").Length];
            if (!Convert.TryFromBase64String(text ?? "", bytes, out var length))
            {
                return null;
            }

            kept.Add(new DocumentFile(Path.GetFileName(name ?? ""), bytes[..Math.Min(length, DocumentText.MostBytes + 1)]));
        }

        return kept;
    }
}
