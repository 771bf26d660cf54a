using System.Collections.Frozen;

namespace ShopJobs.Web.Names;

/// <summary>
/// What a letter is taken for at a glance. From memory of the confusables of Unicode Technical Standard 39: the part of it that
/// reaches Latin letters, figures and the marks people put in names. Compatible forms (full width, mathematical) are not here:
/// normalisation form KD resolves them.
/// </summary>
internal static class LookAlikes
{
    private const string OneForOne = """
        АA ВB ЕE З3 ІI ЈJ КK МM НH ОO РP СC ЅS ТT УY ХX ҮY ԌG ԚQ ԜW
        з3 аa еe іi јj кk оo рp сc ѕs уy хx һh ԁd ԛq ԝw ѵv ьb гr ӏl ӀI
        ΑA ΒB ΕE ΖZ ΗH ΙI ΚK ΜM ΝN ΟO ΡP ΤT ΥY ΧX
        αa βß γy ηn ιi κk νv οo ρp σo τt υu χx
        ՍU ՏS ՕO ցg հh ոn սu օo զq
        ᎠD ᎢT ᎪA ᎫJ ᎬE ᎻH ᏀG ᏃZ ᏔW ᏚS ᏞL ᏢP ᏤV ᏦK ᏟC ᎷM
        ıi ɑa ɡg ɩi ʟL ᴏo ᴄc ᴠv ᴡw ᴢz ǀl סo וl ןl ०o ೦o ٥o ەo ١l ۱l
        0O 1l Il |l
        ‐- ‑- ‒- –- —- −- ˗- ‘' ’' ‛' ′' `' ʼ' ‚, ․. ٠. ۰. ⁄/ ∕/ ∶: ꞉: ·. •.
        """;

    /// <summary>By letter, what it looks like.</summary>
    public static FrozenDictionary<char, string> Table { get; } = OneForOne
        .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
        .ToDictionary(pair => pair[0], pair => pair[1] == 'I' ? "l" : pair[1..])
        .Concat([new('m', "rn"), new('М', "M"), new('ø', "o\u0338"), new('Ø', "O\u0338"), new('ł', "l\u0335"), new('đ', "d\u0335")])
        .DistinctBy(pair => pair.Key)
        .ToFrozenDictionary();
}
