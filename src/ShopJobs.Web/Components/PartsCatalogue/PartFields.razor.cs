using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace ShopJobs.Web.Components.PartsCatalogue;

/// <summary>Saves what is typed, and leads back to the list.</summary>
public sealed partial class PartFields(PartCatalogueDesk desk, NavigationManager navigation)
{
    private PartFormValidator validator = new(new HashSet<string>());
    private PartRefusal? refusal;
    private bool busy;

    [Parameter, EditorRequired]
    public PartForm Form { get; set; } = default!;

    /// <summary>The joints that can be picked.</summary>
    [Parameter, EditorRequired]
    public IReadOnlyList<KindToFill> Kinds { get; set; } = [];

    protected override void OnParametersSet() => validator = new(Kinds.Select(kind => kind.Key).ToHashSet(StringComparer.Ordinal));

    private string? Why(string field) => refusal?.Field == field ? refusal.Words : null;

    private async Task SaveAsync(EditContext context)
    {
        refusal = null;
        if (busy || !context.Validate())
        {
            return;
        }

        busy = true;
        refusal = await desk.SaveAsync(Form);
        busy = false;
        if (refusal is null)
        {
            navigation.NavigateTo("/parts");
        }
    }
}
