using Microsoft.JSInterop;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Layout;

namespace ShopJobs.Web.Components.Step;

// The step is done, and is signed: now, or with the steps after it.
public sealed partial class StepPage
{
    private Task SignAsync(StepAnswers answers) => OnceAsync(async () =>
    {
        answer = await signing.SignAsync(scene!.Car.Id, StepSheet.ToSign(scene, answers));
        await ForgetAsync();
    });

    private Task SignFinishedAsync(IReadOnlyList<StepInstance> finished) => OnceAsync(async () =>
        answer = await signing.SignAsync(scene!.Car.Id, StepSheet.ToSign(scene, finished)));

    // Whoever says that it is done goes on: the page is that of the next step at once, with the same tool in hand.
    private async Task FinishAsync(StepAnswers answers)
    {
        await OnceAsync(async () =>
        {
            answer = await desk.RunAsync(scene!.Car.Id, new FinishStep(scene.Job.Id, scene.Step.Id, answers.Ticks, answers.Values));
            await ForgetAsync();
        });
        if (answer is { Recorded: true } && scene?.Onward is { } onward)
        {
            var tool = chosen is { } inHand ? $"?tool={inHand.Value}" : "";
            navigation.NavigateTo(Links.Step(scene.Car.Id, scene.Job.Id, onward.Id) + tool);
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
