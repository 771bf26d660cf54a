using Microsoft.JSInterop;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Layout;

namespace ShopJobs.Web.Components.Step;

// The step is done, and is signed: now, or with the steps after it.
public sealed partial class StepPage
{
    private string? signedNow;
    private bool finishing;
    private bool goingOn;

    // Between the last touch of a step and the page of the next one nothing is drawn that is gone again at once.
    protected override bool ShouldRender() => !goingOn;

    private async Task SignAsync(StepAnswers answers)
    {
        var signed = StepDialogs.Signed(scene!);
        await FinishingAsync(async () =>
        {
            answer = await signing.SignAsync(scene!.Car.Id, StepDialogs.ToSign(scene, answers));
            await ForgetAsync();
        });
        if (scene is { Standing: StepStanding.Signed } && GoOn())
        {
            signedNow = signed;
        }
    }

    private Task SignFinishedAsync(IReadOnlyList<StepInstance> finished) => OnceAsync(async () =>
        answer = await signing.SignAsync(scene!.Car.Id, StepDialogs.ToSign(scene, finished)));

    private async Task FinishAsync(StepAnswers answers)
    {
        await FinishingAsync(async () =>
        {
            answer = await desk.RunAsync(scene!.Car.Id, new FinishStep(scene.Job.Id, scene.Step.Id, answers.Ticks, answers.Values));
            await ForgetAsync();
        });
        GoOn();
    }

    private Task FinishingAsync(Func<Task> act) => OnceAsync(async () =>
    {
        finishing = true;
        try
        {
            await act();
        }
        finally
        {
            finishing = false;
        }
    });

    // Whoever signs a step, or says that it is done, goes on: the page is that of the next step at once, with the same tool in hand.
    private bool GoOn()
    {
        if (answer is not { Recorded: true } || scene?.Onward is not { } onward)
        {
            return false;
        }

        goingOn = true;
        var tool = chosen is { } inHand ? $"?tool={inHand.Value}" : "";
        navigation.NavigateTo(Links.Step(scene.Car.Id, scene.Job.Id, onward.Id) + tool);
        return true;
    }

    // What was signed is said where the work goes on.
    private async Task SayWhatWasSignedAsync()
    {
        if (signedNow is { } words && drawn == shownFor)
        {
            signedNow = null;
            await script.InvokeVoidAsync("shopStep.told", "signed", new[] { words });
        }
    }

    // What was ticked and typed stands in the book now.
    private async Task ForgetAsync()
    {
        if (answer is { Recorded: true })
        {
            await script.InvokeVoidAsync("shopStep.forget");
        }
    }
}
