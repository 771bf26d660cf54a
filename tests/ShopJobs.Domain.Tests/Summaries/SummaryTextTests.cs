using System.Text;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Summaries;
using ShopJobs.Domain.Tests.Logbook.Workshop;

namespace ShopJobs.Domain.Tests.Summaries;

public sealed class SummaryTextTests
{
    /// <summary>A summary as format 1 writes it; it must be read for ever.</summary>
    private const string Golden = """
        {"format":1,"summary":{"version":2,"replaces":1,"issuedOn":"2026-03-02","issuedBy":"LE, lead","car":{"name":"Blue","model":"Brennock 220","mark":"DEMO 220"},"shop":{"name":"Ninth Bay","contact":"01632 960100","demo":true},"odometerKm":1000.5,"logbook":{"number":41,"hash":"a3f1"},"open":[{"state":"HandTight","words":"wheel nut, front-left: 1 of 5 hand-tight only (no. 2)"},{"state":null,"words":"Fit wheel studs: not started"}],"duties":["Do not drive on track before this re-torque."],"releases":[{"given":false,"words":"Not released to road."}],"work":[{"title":"Fit the wheels: front-left","procedure":"P5, revision 1","from":"2026-03-02","until":null,"askedFor":"wheels","steps":["faces"]}],"found":[{"words":"wheel nut, front-left, no. 3: stopped","decision":"used as it is","usedAsIs":true}],"done":[{"system":"wheels","lines":["wheel nut"]}],"parts":[{"part":"5 × stud, new","lot":"4471","where":"wheel stud, front-left"}],"counts":{"measured":1,"settingConfirmed":2,"witnessed":3,"ticks":4,"resultsMeasured":5,"resultsLookedAt":6,"resultsDeclared":7,"earlier":8,"notChecked":9,"jointsNotChecked":10},"classA":[{"joint":"wheel nut, front-left","fasteners":5,"torque":"110 N·m","evidence":"measured","witness":"yes","reTorque":"due"}],"results":[{"name":"alignment","values":"toe 1.2 mm","basis":"measured"}],"advice":["discs"],"cautions":["Stop."]}}
        """;

    [Fact]
    public void Is_read_back_as_it_was_written()
    {
        var car = new CarAtWork();
        car.FitLeftWheel();
        var bytes = SummaryText.Write(car.Page());

        Assert.Equal(bytes, SummaryText.Write(SummaryText.Read(bytes)));
    }

    [Fact]
    public void The_first_form_is_read_for_ever()
    {
        var page = SummaryText.Read(Encoding.UTF8.GetBytes(Golden));

        Assert.Equal((2, 1, new DateOnly(2026, 3, 2)), (page.Version, page.Replaces, page.IssuedOn));
        Assert.Equal(new OpenItem(PositionState.HandTight, "wheel nut, front-left: 1 of 5 hand-tight only (no. 2)"), page.Open[0]);
        Assert.Equal(new EvidenceCounts(1, 2, 3, 4, 5, 6, 7, 8, 9, 10), page.Counts);
        Assert.Equal(Golden, Encoding.UTF8.GetString(SummaryText.Write(page)));
    }

    [Theory]
    [InlineData("{\"format\":2,\"summary\":null}")]
    [InlineData("{}")]
    [InlineData("not json")]
    public void Anything_else_is_refused(string text) =>
        Assert.Throws<FormatException>(() => SummaryText.Read(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void A_later_form_is_refused_even_when_it_looks_alike() => Assert.Throws<FormatException>(
        () => SummaryText.Read(Encoding.UTF8.GetBytes(Golden.Replace("\"format\":1", "\"format\":2", StringComparison.Ordinal))));
}
