using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Short words that could be spelled on a display but hardly ever are meant as a code.</summary>
internal static class EverydayWords
{
    private static readonly FrozenSet<string> Words =
        ("ac dc hp us usa pc ok tv an in on at it is as be by do go he hi if no of or so to up us ya ye yes yep all "
            + "and any are big but can cut did end far fan few for get got had has he her his "
        + "its let lot now not off old one our out own per pin put ran run saw see set she sir sit the they try too "
        + "top two use via was way who why yet you red led lcd out one ten air "
        + "psi gas hot ice leg off old oil sub sun tee ten ton top tub tap tag sad bad bus cab cap car day dog dry "
        + "ear eat eye fab fed fin fit fun gap hat hear hit hub job lab lag lap lay leg lid "
        + "lit log lug nut oh pad pal pan pay pen pet pit pop pot rag rat ray rid rig rob rod rot row rug sat say sea "
        + "nah ugh huh bah hah aha ooh ahh argh "
        + "hey bye que sip spa spy ten tie tip toe ton toy tug yes job ohm ohms unit ol eh um uh just then")
            .Split(' ').ToFrozenSet(StringComparer.Ordinal);

    public static bool Has(string word) => Words.Contains(word);
}
