using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>The words that stand around and between the characters of a code without being part of it.</summary>
internal static class TalkOfCodes
{
    private static readonly FrozenSet<string> Links = Set(
        "and then followed by next after that plus with now . , ; : _ ' \" ( ) & + / on top of it it's is letter number digit numeral character figure letters numbers "
        + "capital cap big large upper uppercase case lower lowercase little small tiny another beside "
        + "something like either maybe perhaps probably possibly looks looking similar kind sort of might could be");

    private static readonly FrozenSet<string> Cases = Set(
        "letter number digit numeral character figure capital cap big large upper uppercase lower lowercase little "
            + "small case");

    private static readonly FrozenSet<string> Frames = Set(
        "a an the code codes error errors err fault faults alarm trouble display displays displaying displayed shows showing show showed says saying said say "
        + "reads reading read flashing flash flashed blinking blink pulsing pulses panel screen readout throwing threw "
        + "throws gives giving gave got getting get "
        + "seeing sees lit popped popping stuck my me i i'm im i've there there's its it's it is was here this these "
        + "that's thats this's just only like something as "
        + "up out now again today still since this morning today hi hello hey please thanks what whats what's does "
        + "mean means has have having keeps keep kept coming came comes "
        + "come up steady solid solidly constant constantly continuous continuously permanent permanently always all "
        + "time stays stay fixed slow slowly fast quickly steadily "
        + "maybe perhaps probably possibly might could think guess looks look looking sort kind similar either sure "
        + "not isn't isnt doesn't doesnt "
        + "unit unit's indoor outdoor head wall controller thermostat thing lounge bedroom kitchen led lamp light on "
        + "off of in at from when while "
        + "our he says they told customer caller tells me sees unsure again and single lone actual actually exactly "
        + "i'd id "
        + "! ? # = * … [ ] < > - – — { } @ whole both each digits place places position ok okay yes no well so um uh "
        + "er eh right now then goes going nothing else own but though currently minutes few every");

    private static readonly FrozenSet<string> Past = Set("was were first earlier before yesterday used previously had");

    private static readonly FrozenSet<string> Denials = Set("not isn't isnt never");

    /// <summary>Words between two characters of one code.</summary>
    public static bool IsLink(string word) => Links.Contains(word) || word is "-" or "–" or "—" or "dash" or "hyphen"
        or "minus" or "space" or "point" or "dot" or "a" or "an" or "the";

    /// <summary>Words that say that a letter or a digit follows, or how it is written.</summary>
    public static bool IsCase(string word) => Cases.Contains(word);

    /// <summary>Words of a message that holds nothing but a code.</summary>
    public static bool IsFrame(string word) => Frames.Contains(word) || Links.Contains(word);

    public static bool IsPast(string word) => Past.Contains(word);

    public static bool IsDenial(string word) => Denials.Contains(word);

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
