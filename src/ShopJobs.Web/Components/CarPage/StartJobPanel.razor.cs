using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>Chooses procedure, places and the customer's words; starting it is the desk's.</summary>
public sealed partial class StartJobPanel
{
    private readonly List<string> places = [];
    private IReadOnlyList<ProcedureRevision> procedures = [];
    private Offer? offer;
    private string askedFor = "";
    private string? refusal;
    private bool open;
    private bool busy;

    [Parameter, EditorRequired]
    public CarId Car { get; set; }

    [Parameter]
    public EventCallback<DeskAnswer> OnAnswer { get; set; }

    private async Task OpenAsync()
    {
        procedures = await Rows.ProceduresAsync();
        open = true;
    }

    private void Choose(string digest)
    {
        offer = Desk.Read(Car, digest);
        refusal = offer is null ? "The procedure does not fit the shop's joint register, or the shop has none. Look at it under Procedures." : null;
        places.Clear();
        if (offer is { Places: [var only] })
        {
            places.Add(only);
        }
    }

    private void Toggle(string place)
    {
        if (!places.Remove(place))
        {
            places.Add(place);
        }
    }

    private async Task StartAsync()
    {
        if (busy)
        {
            return;
        }

        if (offer is null)
        {
            refusal ??= "Choose the procedure first.";
            return;
        }

        busy = true;
        var answer = await Desk.StartAsync(Car, offer, [.. offer.Places.Where(places.Contains)], Typed.Clean(askedFor));
        busy = false;
        refusal = answer.NotSaved is { } why ? $"Not saved. {why}" : (answer.Reasons is [var first, ..] ? $"{first.Words}: {first.Next}." : null);
        if (answer.Recorded)
        {
            (offer, askedFor, open) = (null, "", false);
            await OnAnswer.InvokeAsync(answer);
        }
    }
}
