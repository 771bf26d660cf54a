namespace ShopJobs.Web.Tests.Architecture;

/// <summary>One word for one thing on every screen, in every sentence and in the demo's own texts. Comments are not read.</summary>
public sealed class PlainWordsTests
{
    public static TheoryData<string> Rules => [.. PlainWords.All.Select(rule => rule.Name)];

    [Theory]
    [MemberData(nameof(Rules))]
    public void Nothing_that_is_shown_says_it_otherwise(string name)
    {
        var rule = PlainWords.All.Single(one => one.Name == name);
        var found = (from text in ShownTexts.All() where rule.Finds(text) select $"{text.File}:{text.Line}: {text.Words.Trim()}").ToList();
        Assert.True(found.Count == 0, $"Say {rule.Say}.\n{rule.Why}\n{string.Join('\n', found)}");
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_old_wording_would_be_found_and_the_new_one_passes(string name)
    {
        var rule = PlainWords.All.Single(one => one.Name == name);
        Assert.True(rule.Finds(new ShownText("Some.razor", 1, rule.Old)), $"“{rule.Old}” is not found.");
        Assert.False(rule.Finds(new ShownText("Some.razor", 1, rule.New)), $"“{rule.New}” is found.");
    }

    [Fact]
    public void Sentences_markup_and_the_demos_texts_are_read_and_comments_are_not()
    {
        var texts = ShownTexts.All().ToList();
        Assert.Contains(texts, text => text.File == "HoldSentences.cs" && text.Words.Contains("a witness checks and signs", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.File == "SignInPage.razor" && text.Words.Contains("Who is working?", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.File == "keypad.js" && text.Words.Contains("Not saved yet", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.File == "P5-wheel-fit-up.yaml" && text.Words.Contains("Dry threads only", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, text => text.Words.Contains("<summary>The one place with their format", StringComparison.Ordinal));
        Assert.Empty(ShownTexts.Of("Some.cs", "    // it stands anew"));
        Assert.Empty(ShownTexts.Of("Some.razor", "@* it stands anew *@"));
    }
}
