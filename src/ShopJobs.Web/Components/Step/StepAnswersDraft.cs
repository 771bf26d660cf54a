using System.Text.Json;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look;

namespace ShopJobs.Web.Components.Step;

/// <summary>Ticks and values given on the screen and not signed yet; the tablet keeps them too.</summary>
public sealed class StepAnswersDraft
{
    private const string TickMark = "tick:";
    private const string ValueMark = "value:";
    private readonly Dictionary<string, string> given = [];
    private long? redone;

    /// <summary>Name under which the tablet keeps a tick.</summary>
    public static string NameOf(Tick tick) => TickMark + tick?.Id;

    /// <summary>The field of a tick on the screen.</summary>
    public static string FieldOf(Tick tick) => $"t-{tick?.Id}";

    /// <summary>The field of a value on the screen.</summary>
    public static string FieldOf(Measure measure) => $"m-{measure?.Id}";

    /// <summary>Name under which the tablet keeps a value.</summary>
    public static string NameOf(Measure measure) => ValueMark + measure?.Id;

    /// <summary>The work is in the cycle that this opening began: what was given in an earlier one is forgotten.</summary>
    public void For(long opening)
    {
        if (redone is { } before && before != opening)
        {
            given.Clear();
        }

        redone = opening;
    }

    /// <summary>What the same person said when the step was finished stands, until it is given otherwise.</summary>
    public void Start(StepFinished? said)
    {
        foreach (var tick in said?.Ticks ?? [])
        {
            given.TryAdd(TickMark + tick, "yes");
        }

        foreach (var value in said?.Values ?? [])
        {
            given.TryAdd(ValueMark + value.Name, value.Value.ToString(System.Globalization.CultureInfo.InvariantCulture));
        }
    }

    /// <summary>True when ticked.</summary>
    public bool IsTicked(Tick tick) => given.GetValueOrDefault(NameOf(tick)) is { Length: > 0 };

    /// <summary>The value as typed.</summary>
    public string Text(Measure measure) => given.GetValueOrDefault(NameOf(measure)) ?? "";

    /// <summary>Gives or takes back one answer.</summary>
    public void Set(string name, string? text) => given[name] = text ?? "";

    /// <summary>Takes what the tablet kept; unknown names are left out when asked for.</summary>
    public void Restore(string json)
    {
        foreach (var (name, text) in JsonSerializer.Deserialize<Dictionary<string, string>>(json) ?? [])
        {
            given[name] = text;
        }
    }

    /// <summary>Why a typed value is none; null for a number or nothing.</summary>
    public string? Problem(Measure measure) => Text(measure) is { Length: > 0 } text && TypedNumber.Signed(text) is null
        ? $"“{text}” is not a number: digits and one decimal mark."
        : null;

    /// <summary>The answers of this step as the rules ask for them.</summary>
    public StepAnswers Of(StepInstance step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return new StepAnswers(
            [.. step.Step.Ticks.Where(IsTicked).Select(tick => tick.Id)],
            [
                .. from measure in step.Step.Measures
                   let number = TypedNumber.Signed(Text(measure))
                   where number is not null
                   select new MeasuredValue(measure.Id, number.Value, measure.Unit),
            ]);
    }
}
