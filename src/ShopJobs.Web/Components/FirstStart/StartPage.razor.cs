using Microsoft.AspNetCore.Components;
using ShopJobs.Web.Accounts;

namespace ShopJobs.Web.Components.FirstStart;

/// <summary>The first page of a new database.</summary>
public sealed partial class StartPage(FirstStartDesk desk, NavigationManager navigation)
{
    private string? refusal;
    private IReadOnlyDictionary<string, string> wrong = new Dictionary<string, string>();
    private string? pin;
    private bool half;

    [CascadingParameter]
    private HttpContext Http { get; set; } = default!;

    [SupplyParameterFromForm(FormName = "empty")]
    private NewShop? Form { get; set; }

    private string? Wrong(string field) => wrong.GetValueOrDefault(field);

    private string Zone => Form?.Zone ?? TimeZoneInfo.Local.Id;

    protected override async Task OnInitializedAsync()
    {
        if (!await desk.IsNeededAsync(Http.RequestAborted))
        {
            navigation.NavigateTo("/");
        }

        half = await desk.IsHalfFurnishedAsync(Http.RequestAborted);
    }

    private async Task OpenDemoAsync()
    {
        refusal = await desk.OpenDemoAsync(Http);
        if (refusal is null)
        {
            navigation.NavigateTo("/sign-in");
        }
    }

    private async Task OpenEmptyAsync()
    {
        var form = Form ?? new NewShop();
        var check = await new NewShopValidator().ValidateAsync(form, Http.RequestAborted);
        if (!check.IsValid)
        {
            wrong = check.Errors.GroupBy(error => error.PropertyName).ToDictionary(same => same.Key, same => same.First().ErrorMessage);
            return;
        }

        var made = Pin.Random();
        refusal = await desk.OpenEmptyAsync(Http, form, made);
        pin = refusal is null ? made : null;
    }
}
