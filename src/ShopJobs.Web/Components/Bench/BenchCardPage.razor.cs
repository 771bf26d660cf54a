using FluentValidation.Results;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Routing;
using ShopJobs.Web.Components.Bench.Fields;

namespace ShopJobs.Web.Components.Bench;

/// <summary>One card opened by its own address; the address follows what is typed.</summary>
public sealed partial class BenchCardPage(NavigationManager navigation)
{
    /// <summary>Addresses this page wrote and has not yet heard back: typing runs ahead of them and is never overwritten by one.</summary>
    private readonly Queue<string> written = new();

    private BenchCard? card;
    private BenchInputs inputs = null!;
    private IReadOnlyList<ValidationFailure> problems = [];
    private BenchAnswer? answer;
    private bool opensMore;

    /// <summary>The card's name.</summary>
    [Parameter]
    public string Key { get; set; } = "";

    private IEnumerable<BenchField> Asked => card!.Fields.Where(asked => asked.IsAsked(inputs));

    /// <summary>True while nobody has entered anything.</summary>
    private bool IsExample => Asked.All(asked => inputs.IsExample(asked) || !asked.IsGiven(inputs));

    public void Dispose() => navigation.LocationChanged -= FollowAddress;

    protected override void OnInitialized() => navigation.LocationChanged += FollowAddress;

    protected override void OnParametersSet()
    {
        if (card?.Key != Key)
        {
            ReadAddress();
        }
    }

    private string? Problem(string name) => problems.FirstOrDefault(problem => problem.PropertyName == name)?.ErrorMessage;

    private void ReadAddress()
    {
        card = BenchCards.Find(Key);
        if (card is null)
        {
            return;
        }

        var query = navigation.ToAbsoluteUri(navigation.Uri).Query;
        inputs = BenchAddress.Read(card, query);
        opensMore = card.Fields.Any(field => field.IsMore && field.IsGiven(inputs));
        Compute();
    }

    private void Change(BenchField field, string text) => Take(inputs.With(field, text));

    private void ChangeUnits(BenchUnits units) => Take(inputs.In(units, card!));

    private void Take(BenchInputs changed)
    {
        inputs = changed;
        Compute();
        // With its escapes, as the browser gives it back: "Uri.ToString" takes some away.
        var address = navigation.ToAbsoluteUri(BenchAddress.Of(card!, inputs)).AbsoluteUri;
        written.Enqueue(address);
        navigation.NavigateTo(address, new NavigationOptions { ReplaceHistoryEntry = true });
    }

    private void Compute()
    {
        problems = new BenchInputsValidator(card!).Validate(inputs).Errors;
        answer = problems.Count == 0 ? card!.Answer(inputs) : null;
    }

    private void FollowAddress(object? sender, LocationChangedEventArgs change)
    {
        var location = new Uri(change.Location).AbsoluteUri;
        if (written.Contains(location))
        {
            while (written.Dequeue() != location)
            {
            }

            return;
        }

        if (card is not null && navigation.ToAbsoluteUri(change.Location).AbsolutePath == BenchAddress.Of(card))
        {
            _ = InvokeAsync(() =>
            {
                ReadAddress();
                StateHasChanged();
            });
        }
    }
}
