using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>An author hands in documents. Works without a circuit.</summary>
public sealed partial class UploadPage(ProcedureImport import, WhoIsHere who)
{
    private const int MostFiles = 20;

    private ImportReport? report;
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

        var uploads = Http.Request.Form.Files.GetFiles("documents");
        if (uploads.Count is 0 or > MostFiles)
        {
            refusal = uploads.Count == 0 ? "No file was chosen. Choose at least one." : $"At most {MostFiles} files are taken at once.";
            return;
        }

        var files = new List<DocumentFile>();
        foreach (var upload in uploads)
        {
            await using var content = upload.OpenReadStream();
            files.Add(await DocumentFile.ReadAsync(Path.GetFileName(upload.FileName), content, Http.RequestAborted));
        }

        report = await import.ImportAsync(files, present.Person, Http.RequestAborted);
    }
}
