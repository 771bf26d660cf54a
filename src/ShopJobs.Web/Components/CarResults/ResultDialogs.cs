using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarResults;

/// <summary>What is shown when a result is signed.</summary>
internal static class ResultDialogs
{
    /// <summary>A result with its values, notes, instrument and the car's condition.</summary>
    /// <param name="job">The job and step it is recorded from; null where it is recorded from the car.</param>
    public static ToSign<SignedCommand> ToRecord(CarReading reading, Car car, ResultAsked asked, (JobId Job, Domain.Procedures.StepInstance Step)? job)
    {
        var register = reading.Now.Register;
        var kind = register.ResultOf(asked.Name);
        var measures = kind.Measures.Count > 0 ? kind.Measures : job?.Step.Step.Measures ?? [];
        var conditions = Conditions(reading);
        var with = asked.Tool is { } tool ? reading.Tools.GetValueOrDefault(tool)?.Name : asked.Instrument;
        return new ToSign<SignedCommand>(
            new SignRequest(
                "SIGN: measured by me",
                $"{(car.Mark.Length > 0 ? $"{car.Name}, {car.Model}, {car.Mark}" : $"{car.Name}, {car.Model}")}: {register.NameOfResult(asked.Name)}",
                [
                    .. asked.Values.Select(value => measures.FirstOrDefault(measure => measure.Id == value.Name) is { } measure
                        ? $"{measure.Text}: {value.Amount()}{(measure.Takes(value.Value) ? "" : $", outside {measure.Limits()}: no good result")}"
                        : $"{value.Name}: {value.Amount()}"),
                    .. asked.Notes.Select(note => $"{kind.Notes.First(one => one.Id == note.Name).Text}: {note.Text}"),
                    .. with is null ? Array.Empty<string>() : [$"Measured with {with}"],
                    .. conditions.Select(condition => $"The car: {condition}"),
                ],
                new CommandId(Guid.NewGuid()))
            { Needs = Right.Record },
            shown => reading.State.AsShown(reading.Now, new RecordResult(
                asked.Name, asked.Values, ResultBasis.Measured, asked.Instrument, conditions, job?.Job, job?.Step.Id, shown)
            {
                Notes = asked.Notes.Count > 0 ? asked.Notes : null,
                Tool = asked.Tool,
            }));
    }

    private static List<string> Conditions(CarReading reading) =>
    [
        .. reading.State.Conditions.Values.Where(said => !reading.State.HasEnded(reading.Now, said)).OrderBy(said => said.Number)
            .Select(said => $"{(said.Place is null ? "" : $"{said.Place} ")}{ConditionSaid.Of(new CarCondition(said.Aspect, said.Value))}"),
    ];
}
