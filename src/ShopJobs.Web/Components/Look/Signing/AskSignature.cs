using MudBlazor;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.Look.Signing;

/// <summary>For pages: one line to get a signature.</summary>
public static class AskSignature
{
    private static readonly DialogOptions Options = new()
    {
        MaxWidth = MaxWidth.Medium,
        FullWidth = true,
        BackdropClick = false,
        CloseOnEscapeKey = true,
    };

    /// <summary>The proof, or null when nobody signed.</summary>
    public static async Task<SignatureProof?> SignAsync(this IDialogService dialogs, SignRequest request)
    {
        var parameters = new DialogParameters<SignDialog> { { dialog => dialog.Request, request } };
        var dialog = await dialogs.ShowAsync<SignDialog>(request.Shown.Title, parameters, Options);
        return (await dialog.Result)?.Data as SignatureProof;
    }
}
