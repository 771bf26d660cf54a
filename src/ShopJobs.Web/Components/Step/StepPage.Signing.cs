using Microsoft.JSInterop;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Layout;

namespace ShopJobs.Web.Components.Step;

// What is signed on a step: that it is done, now or with the steps after it; what a second person saw; what somebody answers for.
public sealed partial class StepPage
{
    private string? signedNow;
    private Leaving leaving;

    private enum Leaving
    {
        No,
        Signing,
        GoingOn,
    }

    // Between the last touch of a step and the page of the next one nothing is drawn that is gone again at once.
    protected override bool ShouldRender() => leaving != Leaving.GoingOn;

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

    private async Task WitnessAsync(WitnessAsked asked)
    {
        var isThought = false;
        await OnceAsync(async () =>
        {
            // What is on the screen now is what is looked at and signed.
            var shown = scene!;
            var finding = asked.Accepted ? null : await AskAsync(StepDialogs.Finding(asked));
            if (asked.Accepted || finding is not null)
            {
                var opened = time.GetTimestamp();
                Keep(await signing.SignAsync(shown.Car.Id, StepDialogs.ToWitness(shown, asked, finding?.Text)), finding);
                if (asked.Accepted && answer is { Recorded: true } && SecondThoughts.OnLook(time.GetElapsedTime(opened)) is { } thought)
                {
                    isThought = true;
                    await script.InvokeVoidAsync("shopDevice.think", SecondThoughtWords.Of(thought));
                }
            }
        });

        // A word to the witness is read first.
        if (asked.Accepted && !isThought && answer is { Recorded: true } && OnlySignatureMissing(asked.Awaited.Workers))
        {
            await SignAsync(draft.Of(scene!.Step));
        }
    }

    // The tablet goes back to whoever did the work.
    private bool OnlySignatureMissing(IReadOnlySet<PersonId> workers) =>
        scene is { } after && workers.Contains(after.Here.Person)
        && NextThing.Of(after, draft, Half) is NextThing.SignOff
        && after.Reading.HoldsOn(after.Job, after.Step, draft.Of(after.Step), []).Count == 0;

    private Task CountersignAsync(IReadOnlyList<Pull> pulls) => OnceAsync(async () =>
        answer = await signing.SignAsync(scene!.Car.Id, StepDialogs.ToCountersign(scene, pulls)));

    private Task AnswerForAsync(SignOff sign) => OnceAsync(async () =>
        answer = await signing.SignAsync(scene!.Car.Id, StepDialogs.ToCountersign(scene, sign)));

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
        leaving = Leaving.Signing;
        try
        {
            await act();
        }
        finally
        {
            leaving = Leaving.No;
        }
    });

    // Whoever signs a step, or says that it is done, goes on: the page is that of the next step at once, with the same tool in hand.
    private bool GoOn()
    {
        if (answer is not { Recorded: true } || scene?.Onward is not { } onward)
        {
            return false;
        }

        leaving = Leaving.GoingOn;
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
