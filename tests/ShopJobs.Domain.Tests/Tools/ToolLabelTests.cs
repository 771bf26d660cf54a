using ShopJobs.Domain.Tools;

namespace ShopJobs.Domain.Tests.Tools;

public sealed class ToolLabelTests
{
    [Fact]
    public void The_code_of_a_tool_is_a_letter_and_eight_digits_and_never_changes()
    {
        // The first eight bytes of the id are 8, least first: its last eight digits are 00000008.
        Assert.Equal("T00000008", ToolLabel.CodeOf(new ToolId(new Guid(8, 0, 0, new byte[8]))));
        Assert.Equal("T94967295", ToolLabel.CodeOf(new ToolId(new Guid(-1, 0, 0, new byte[8]))));
    }

    [Fact]
    public void Tools_have_codes_of_their_own()
    {
        var codes = Enumerable.Range(0, 200).Select(number => ToolLabel.CodeOf(new ToolId(new Guid(number, 7, 0, new byte[8])))).ToList();

        Assert.Equal(200, codes.Distinct().Count());
    }

    [Theory]
    [InlineData("T40718293", true)]
    [InlineData(" t40718293 ", true)]
    [InlineData("40718293", false)]
    [InlineData("T4071829", false)]
    [InlineData("T407182930", false)]
    [InlineData("T4071829x", false)]
    [InlineData("", false)]
    [InlineData(null, false)]
    public void Only_a_whole_label_is_read(string? text, bool isLabel)
    {
        Assert.Equal(isLabel, ToolLabel.TryRead(text, out var code));
        if (isLabel)
        {
            Assert.Equal("T40718293", code);
        }
    }
}
