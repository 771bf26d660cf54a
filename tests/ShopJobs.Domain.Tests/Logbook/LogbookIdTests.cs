using ShopJobs.Domain.Logbook;

namespace ShopJobs.Domain.Tests.Logbook;

public class LogbookIdTests
{
    [Theory]
    [InlineData(LogbookKind.Car, "car:0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a")]
    [InlineData(LogbookKind.Tool, "tool:0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a")]
    [InlineData(LogbookKind.Shop, "shop:0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a")]
    public void Is_written_as_kind_and_owner_and_read_back(LogbookKind kind, string text)
    {
        var id = new LogbookId(kind, Guid.Parse("0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a"));
        Assert.Equal(text, id.ToString());
        Assert.True(LogbookId.TryParse(text, out var read));
        Assert.Equal(id, read);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("car")]
    [InlineData("car:")]
    [InlineData("Car:0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a")]
    [InlineData("lift:0b6f3f0e-5d2a-4c8e-9a51-1f2e3d4c5b6a")]
    [InlineData("car:0b6f3f0e5d2a4c8e9a511f2e3d4c5b6a")]
    public void Anything_else_names_no_logbook(string? text) => Assert.False(LogbookId.TryParse(text, out _));
}
