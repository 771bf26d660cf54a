using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Web.Components.CarResults;

namespace ShopJobs.Web.Tests.CarResults;

public sealed class ResultDraftTests
{
    private static readonly ResultKind RunOut = ResultKind.Bare("run-out") with
    {
        OfPlace = true,
        NeedsInstrument = true,
        Measures = [new Measure("run-out", "Run-out", "mm", 0, 0.08m)],
        Notes = [new ResultNote("grade", "Grade", ["DOT 4"], false), new ResultNote("opened", "Opened", [], true)],
    };

    private readonly ResultDraft draft = new(RunOut, "run-out@front-left", RunOut.Measures);

    [Fact]
    public void An_empty_form_says_nothing_until_it_is_sent_and_then_what_each_field_lacks()
    {
        Assert.Null(draft.Problem(RunOut.Measures[0]));
        Assert.Null(draft.InstrumentProblem);

        Assert.Null(draft.Read());

        Assert.Equal("Type the value, in mm.", draft.Problem(RunOut.Measures[0]));
        Assert.Equal("Fill this in.", draft.Problem(RunOut.Notes[0]));
        Assert.Equal("Choose what it was measured with.", draft.InstrumentProblem);
    }

    [Theory]
    [InlineData("abc", "“abc” is not a number: digits and one decimal mark.")]
    [InlineData("0.0.5", "“0.0.5” is not a number: digits and one decimal mark.")]
    [InlineData("<script>alert(1)</script>", "“<script>alert(1)</script>” is not a number: digits and one decimal mark.")]
    [InlineData("12345678901234", "“12345678901234” is not a number: digits and one decimal mark.")]
    public void What_is_no_number_is_said_at_once(string typed, string words)
    {
        draft.Set("run-out", typed);
        Assert.Equal(words, draft.Problem(RunOut.Measures[0]));
    }

    [Theory]
    [InlineData("0.08", null)]
    [InlineData("0,081", "Outside 0 to 0.08 mm. Read it again; recorded like this, it holds the car until it is put right.")]
    [InlineData("-1", "Outside 0 to 0.08 mm. Read it again; recorded like this, it holds the car until it is put right.")]
    public void A_value_outside_its_limits_is_asked_once_and_taken(string typed, string? words)
    {
        draft.Set("run-out", typed);
        Assert.Null(draft.Problem(RunOut.Measures[0]));
        Assert.Equal(words, draft.Outside(RunOut.Measures[0]));
    }

    [Fact]
    public void A_whole_form_gives_the_result_with_its_instrument()
    {
        var gauge = Guid.NewGuid();
        draft.Set("run-out", "0,05");
        draft.Set("grade", "DOT 4");
        draft.Set("opened", "2026-11-02");
        draft.Instrument = gauge.ToString();

        var asked = draft.Read()!;

        Assert.Equal([new MeasuredValue("run-out", 0.05m, "mm")], asked.Values);
        Assert.Equal([new WrittenNote("grade", "DOT 4"), new WrittenNote("opened", "2026-11-02")], asked.Notes);
        Assert.Equal(("run-out@front-left", gauge), (asked.Name, asked.Tool!.Value.Value));
    }

    [Theory]
    [InlineData("DOT 3", "2026-11-02", "Choose one of DOT 4.", null)]
    [InlineData("DOT 4", "yesterday", null, "“yesterday” is not a day.")]
    public void A_note_takes_only_what_the_register_names(string grade, string opened, string? ofGrade, string? ofDay)
    {
        draft.Set("grade", grade);
        draft.Set("opened", opened);
        Assert.Equal((ofGrade, ofDay), (draft.Problem(RunOut.Notes[0]), draft.Problem(RunOut.Notes[1])));
    }
}
