using Microsoft.AspNetCore.Components;
using MudBlazor;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Summaries;

/// <summary>Preview, issue and links of a car's work summary.</summary>
public sealed partial class SummaryPage(
    SummaryDesk desk, SummaryShelf shelf, WhoIsHere here, IDialogService dialogs)
{
    private readonly SummaryFormValidator validator = new();
    private SummaryForm form = new();
    private SummaryFields fields = default!;
    private SummaryDraft? draft;
    private Present? present;
    private IReadOnlyList<IssuedVersion> versions = [];
    private IReadOnlyList<(string Field, string Words)> problems = [];
    private IReadOnlyList<string> refusals = [];
    private string? said;
    private bool missing;
    private bool busy;

    [Parameter]
    public Guid Id { get; set; }

    private CarId Car => new(Id);

    protected override async Task OnInitializedAsync()
    {
        form = desk.NewForm(Car);
        await ReadAsync();
    }

    private Task BeginAnewAsync()
    {
        form = desk.NewForm(Car);
        return ReadAsync();
    }

    protected override bool Matters(LogbookNotice notice) => notice.Logbook.Kind == LogbookKind.Tool || notice.Logbook.Owner == Id;

    protected override async Task ReadAsync()
    {
        present = await here.LookingAsync();
        draft = present is null ? null : await desk.DraftAsync(Car, form, present);
        missing = present is not null && draft is null;
        versions = shelf.Of(Car);
    }

    private async Task IssueAsync()
    {
        (said, refusals) = (null, []);
        problems = [.. validator.Validate(form).Errors.Select(error => (error.PropertyName, error.ErrorMessage))];
        if (problems.Count > 0 || await here.ActingAsync() is not { } signer || await desk.DraftAsync(Car, form, signer) is not { } shown)
        {
            return;
        }

        draft = shown;
        busy = true;
        var request = shown.ToSign(new CommandId(Guid.NewGuid())) with { Only = signer.Person };
        if (await dialogs.SignAsync(request) is { } proof)
        {
            var answer = await desk.IssueAsync(shown, proof, request.Command, request.Shown);
            Tell(answer, shown);
            if (answer.Recorded)
            {
                await fields.ForgetAsync();
            }

            await ReadAsync();
        }

        busy = false;
    }

    private void Tell(DeskAnswer answer, SummaryDraft issued)
    {
        refusals = answer.NotSaved is { } why ? [$"Not saved. {why}"] : [.. answer.Reasons.Select(reason => $"{reason.Words}: {reason.Next}.")];
        said = answer.Recorded ? $"Version {issued.Page.Version} is issued. Customers' links show it now." : null;
    }
}
