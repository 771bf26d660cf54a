using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Components.TorqueTools;

namespace ShopJobs.Web.Tests.TorqueTools;

public sealed class CalibrationFormTests
{
    private static readonly TorqueTool Wrench = new(
        new ToolId(Guid.NewGuid()), "W7", "S-71", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1);

    private static DateOnly Day(string text) => DateOnly.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void It_starts_with_the_usual_points_and_a_year()
    {
        var form = CalibrationForm.For(Wrench, ToolBench.Today);

        Assert.Equal(["40", "120", "200"], form.Points.Select(point => point.Set));
        Assert.Equal(ToolBench.Today.AddYears(1), form.Due);
    }

    [Fact]
    public void Pairs_go_where_they_were_read()
    {
        var form = Form(("40", "36,4", "40"), ("120", "", "120.5"), ("200", "", ""));

        var calibration = form.ToCalibration(Wrench);

        Assert.Equal([new CalibrationPoint(40, 36.4m)], calibration.AsFound);
        Assert.Equal([new CalibrationPoint(40, 40), new CalibrationPoint(120, 120.5m)], calibration.AsLeft);
    }

    [Theory]
    [InlineData("110", "81 lbf·ft", "the tool is in N·m", "Points[0].Left")]
    [InlineData("110", "-110", "has a sign", "Points[0].Left")]
    [InlineData("300", "300", "outside the tool's range, 40 to 200 N·m", "Points[0].Set")]
    [InlineData("", "110", "Nothing entered", "Points[0].Set")]
    [InlineData("110", "<b>110</b>", "does not start with a number", "Points[0].Left")]
    public void A_bad_reading_is_told_at_its_field(string set, string left, string says, string field)
    {
        var error = Assert.Single(Validate(Form((set, "", left))).Errors);

        Assert.Contains(says, error.ErrorMessage, StringComparison.Ordinal);
        Assert.Equal(field, error.PropertyName);
    }

    [Fact]
    public void Without_any_reading_or_certificate_it_is_no_calibration()
    {
        var form = Form(("40", "", ""));
        form.Certificate = " ";

        Assert.Equal(["Certificate", "Points"], Validate(form).Errors.Select(error => error.PropertyName));
    }

    [Fact]
    public void Dates_are_not_of_tomorrow_and_not_backwards()
    {
        var form = Form(("40", "", "40"));
        (form.Date, form.Due) = (ToolBench.Today.AddDays(1), ToolBench.Today);

        Assert.Equal(["Date", "Due"], Validate(form).Errors.Select(error => error.PropertyName));
    }

    [Theory]
    [InlineData("1900-01-01", "1901-01-01", "Date", "That is more than 5 years ago. Read the certificate's date again.")]
    [InlineData("2026-03-01", "2029-03-02", "Due", "A calibration is good for at most 3 years here. Read both days again.")]
    public void A_slip_in_a_day_is_told_at_its_field(string date, string due, string field, string words)
    {
        var form = Form(("40", "", "40"));
        (form.Date, form.Due) = (Day(date), Day(due));

        var error = Assert.Single(Validate(form).Errors);
        Assert.Equal((field, words), (error.PropertyName, error.ErrorMessage));
    }

    [Fact]
    public void Good_readings_with_none_as_left_are_told_before_they_are_signed()
    {
        var form = Form(("40", "40", ""), ("200", "200", ""));
        var preview = Preview(form);

        Assert.Contains("No reading as left: it is out of use until it is calibrated.", preview.Lines);
        Assert.Contains("Found good.", preview.Lines);
    }

    [Fact]
    public void The_preview_says_that_earlier_work_will_be_in_doubt()
    {
        var preview = Preview(Form(("40", "36.4", "40"), ("200", "182", "200")));

        Assert.True(preview.Doubts);
        Assert.Contains(preview.Lines, line => line.StartsWith("Found outside its limit: every position it tightened since 2 Jan 2026 is in doubt", StringComparison.Ordinal));
        Assert.Empty(preview.Cautions);
    }

    [Fact]
    public void The_preview_asks_about_a_certificate_in_another_unit()
    {
        // 110 N·m is 81.1 lbf·ft: 1 lbf·ft = 1.3558179483314004 N·m (NIST SP 811, appendix B).
        var preview = Preview(Form(("40", "", "40"), ("110", "", "81"), ("200", "", "200")));

        Assert.Contains("written in lbf·ft", Assert.Single(preview.Cautions), StringComparison.Ordinal);
        Assert.Contains(preview.Lines, line => line.StartsWith("Left outside its limit", StringComparison.Ordinal));
    }

    [Fact]
    public void The_preview_says_where_the_error_stays_unknown()
    {
        Assert.Contains("No reading as left at 200 N·m", Assert.Single(Preview(Form(("40", "", "40"))).Cautions), StringComparison.Ordinal);
    }

    private static CalibrationPreview Preview(CalibrationForm form)
    {
        var at = ToolBench.Noon.UtcDateTime.AddMonths(-2);
        var last = new DateOnly(2026, 1, 2);
        var state = ToolState.Empty
            .Apply(new Recorded(1, at, default, new ToolEntered(Wrench.Id!.Value, "W7", "S-71", ToolKind.Click, TorqueUnit.NewtonMetre, 40, 200, 1, null)))
            .Apply(new Recorded(2, at, default, new Calibrated(last, last.AddYears(1), "Bench 4, 11", [], [new CalibrationPoint(110, 110)])));
        return CalibrationPreview.Of(state, form.ToCalibration(Wrench), ToolBench.Noon.UtcDateTime);
    }

    private static FluentValidation.Results.ValidationResult Validate(CalibrationForm form) =>
        new CalibrationFormValidator(Wrench, ToolBench.Today).Validate(form);

    private static CalibrationForm Form(params (string Set, string Found, string Left)[] points)
    {
        var form = new CalibrationForm { Date = ToolBench.Today, Due = ToolBench.Today.AddYears(1), Certificate = "Bench 4, 12" };
        form.Points.AddRange(points.Select(point => new CalibrationForm.PointRow { Set = point.Set, Found = point.Found, Left = point.Left }));
        return form;
    }
}
