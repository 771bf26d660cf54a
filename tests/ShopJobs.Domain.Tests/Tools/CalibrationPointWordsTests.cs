using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Tools;

public sealed class CalibrationPointWordsTests
{
    /// <summary>Deviation by ISO 6789, from memory: (indicated - reference)/reference. The rest is arithmetic.</summary>
    [Theory]
    [InlineData(110, 100.1, "+9.9 %", "delivers too little")]
    [InlineData(100, 104, "-3.8 %", "delivers too much")]
    [InlineData(100, 100, "0.0 %", "delivers what is set")]
    [InlineData(100, 100.04, "0.0 %", "delivers what is set")]
    [InlineData(200, 195, "+2.6 %", "delivers too little")]
    public void A_point_is_said_by_definition_and_in_words(decimal set, decimal rig, string deviation, string words)
    {
        var point = new CalibrationPoint(set, rig);

        Assert.Equal((deviation, words), (point.DeviationText(), point.Words()));
    }
}
