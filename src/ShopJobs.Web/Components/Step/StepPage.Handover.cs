using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Step;

// Work that is half done, is left, and goes on.
public sealed partial class StepPage
{
    /// <summary>The joint in hand as far as it has come; null where it is not begun, or done, or nothing is to be done on it now.</summary>
    private HalfDone? Half => scene is { Shown.Instance: { } instance, Next: NextAction.PullNow or NextAction.ByHand } ? HalfDone.Of(scene.State, instance) : null;

    private Task TakeOverAsync(HalfDone half) => OnceAsync(async () =>
        answer = await desk.RunAsync(scene!.Car.Id, new TakeOver(scene.Job.Id, half.Instance.Group.Id, half.Instance.Place, half.Number)));

    private Task LeaveAsync(string words) => OnceAsync(async () =>
    {
        if (Half is { } half)
        {
            var leave = new LeaveHalfDone(scene!.Job.Id, half.Instance.Group.Id, half.Instance.Place, half.Number);
            answer = words.Length == 0
                ? await desk.RunAsync(scene.Car.Id, leave)
                : await desk.RunAsync(scene.Car.Id, new CommandId(Guid.NewGuid()), words, digest => leave with { Words = digest });
        }
    });
}
