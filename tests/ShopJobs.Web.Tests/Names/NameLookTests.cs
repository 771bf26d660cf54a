using ShopJobs.Web.Names;

namespace ShopJobs.Web.Tests.Names;

/// <summary>Look-alike pairs are from memory of the confusables of Unicode Technical Standard 39; letters are given by their number.</summary>
public sealed class NameLookTests
{
    [Theory]
    [InlineData("Jorn", "jorn")]
    [InlineData("Jorn", "J\u043Ern")] // Cyrillic o
    [InlineData("Jorn", "J\u03BFrn")] // Greek omicron
    [InlineData("Edda", "\u0415dda")] // Cyrillic capital ie
    [InlineData("Tove", "\u0422\u03BFve")]
    [InlineData("TOM", "\u0442om")] // Cyrillic te, which looks like T as a capital
    [InlineData("W7", "\uFF37\uFF17")] // full width
    [InlineData("W7", "\U0001D416\U0001D7D5")] // mathematical bold
    [InlineData("W1", "Wl")]
    [InlineData("W1", "WI")]
    [InlineData("Ida", "lda")]
    [InlineData("W0", "WO")]
    [InlineData("W10", "wlo")]
    [InlineData("Ren\u00E9", "Rene\u0301")] // composed, decomposed
    [InlineData("J\u00F6rn", "Jo\u0308rn")]
    [InlineData("Lift A", "Lift  A")]
    [InlineData("Lift A", " Lift\u00A0A ")] // no-break space
    [InlineData("Lift A", "Lift\u2003\u0391")] // em space, Greek alpha
    [InlineData("Arne", "Ame")]
    [InlineData("T-1", "T\u2011l")] // no-break hyphen
    [InlineData("O'Dell", "O\u2019Dell")]
    [InlineData("Jorn", "Jo\u200Brn")] // a name of before the rule
    [InlineData("Jorn", "\u202EJorn")]
    [InlineData("Blue", "BIue")]
    [InlineData("Scales", "S\u0441ales")]
    public void Passes_for_the_other(string one, string other)
    {
        Assert.True(NameLook.Alike(one, other));
        Assert.True(NameLook.Alike(other, one));
    }

    [Theory]
    [InlineData("Ali", "All")]
    [InlineData("Rene", "Ren\u00E9")]
    [InlineData("Jorn", "J\u00F6rn")]
    [InlineData("W1", "W7")]
    [InlineData("W1", "W11")]
    [InlineData("Lift A", "Lift B")]
    [InlineData("Lift A", "LiftA")]
    [InlineData("P1", "P10")]
    [InlineData("Jorn", "Jor\u00F8n")]
    [InlineData("\u0418\u0432\u0430\u043D", "Ivan")] // read alike, look different
    public void Is_a_name_of_its_own(string one, string other) => Assert.False(NameLook.Alike(one, other));

    [Fact]
    public void The_one_it_passes_for_is_named() => Assert.Equal("Jorn", NameLook.FirstAlike("j\u043ERN", ["Edda", "Jorn", "Sefa"]));

    [Fact]
    public void Half_a_letter_is_found_and_does_not_stop_the_comparison()
    {
        var half = $"Jo{(char)0xD835}rn";
        Assert.Equal(2, UnseenLetters.FirstIn(half));
        Assert.True(NameLook.Alike(half, "Jorn"));
    }

    [Theory]
    [InlineData("\u202EJorn", 0)] // right-to-left override
    [InlineData("Jo\u200Frn", 2)] // right-to-left mark
    [InlineData("Jo\u2066rn", 2)] // isolate
    [InlineData("Jo\u200Brn", 2)] // zero-width space
    [InlineData("Jo\u200Drn", 2)] // joiner
    [InlineData("Jo\u2060rn", 2)] // word joiner
    [InlineData("\uFEFFJorn", 0)]
    [InlineData("Jo\u00ADrn", 2)] // soft hyphen
    [InlineData("Jo\u034Frn", 2)] // grapheme joiner
    [InlineData("\u3164", 0)] // filler
    [InlineData("Jorn\u2800", 4)] // empty braille cell
    [InlineData("Jorn\uFE0F", 4)] // variation selector
    [InlineData("Jorn\U000E0041", 4)] // tag letter
    [InlineData("Jo\uE000rn", 2)] // private use
    [InlineData("Jo\nrn", 2)]
    public void Character_that_nobody_sees_is_found(string name, int place) => Assert.Equal(place, UnseenLetters.FirstIn(name));

    [Theory]
    [InlineData("J\u00F6rn O'Dell-Ma\u00DF")]
    [InlineData("Rene\u0301")]
    [InlineData("\u0418\u0432\u0430\u043D")]
    [InlineData("\u0645\u0631\u064A\u0645")]
    [InlineData("\u5C0F\u6797")]
    [InlineData("W7 \U0001F527")]
    public void Name_of_any_script_is_plain(string name)
    {
        Assert.Null(UnseenLetters.FirstIn(name));
        Assert.Null(NameRules.WrongLetters(name));
    }

    [Theory]
    [InlineData("Jo\u200Frn", "It has a character that nobody sees after “Jo”. Type it by hand instead of pasting it.")]
    [InlineData("\u202EJorn", "It has a character that nobody sees at its beginning. Type it by hand instead of pasting it.")]
    [InlineData("...", "A name has at least one letter or figure.")]
    public void Words_say_where_and_what_to_do(string name, string words) => Assert.Equal(words, NameRules.WrongLetters(name));

    [Fact]
    public void Taken_names_the_other()
    {
        Assert.Equal("There is another car called Blue already.", NameRules.Taken("blue", "Blue", "another car"));
        Assert.Equal("“BIue” looks like “Blue”, the name of another car.", NameRules.Taken("BIue", "Blue", "another car"));
    }
}
