using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>Words that say how a part is: ill, well, or worked upon. All as stems.</summary>
internal static class States
{
    /// <summary>
    /// To deny one of these is to say that the part is healthy; to deny any other word is a complaint ("not cooling").
    /// </summary>
    public static readonly FrozenSet<string> Ill = Stems("""
        blocked dirty jammed stuck failed loose leak kinked crossed shorted short grounded burned low high frozen ice icing noise
        tripped overcharged undercharged miswired broken undersized problem issue fault damage damaged restriction obstruction
        corroded swapped condensables interference restricted reversed bent overheating wrong error drift tilted conflict seized unbalanced cracked faulty rubbing missing clash alarm culprit cause blame amiss lost break
        """);

    /// <summary>Those that say nothing of the kind of trouble: to deny one is to say that the part is well.</summary>
    public static readonly FrozenSet<string> AnyIll =
        Stems("wrong problem issue fault culprit cause blame amiss faulty error");

    private static readonly Dictionary<string, string[]> WellWords = new(StringComparer.Ordinal)
    {
        ["clean"] = ["dirty", "blocked"], ["spotless"] = ["dirty", "blocked"],
        ["clear"] = ["dirty", "blocked", "kinked"],
        ["freely"] = ["stuck", "jammed"], ["free"] = ["stuck", "jammed"], ["tight"] = ["loose"],
        ["seated"] = ["loose", "misseated"],
        ["correct"] = ["crossed", "miswired", "wrong", "mismatch", "swapped", "winding", "failed"],
        ["correctly"] = ["crossed", "miswired", "wrong", "mismatch", "failed"],
        ["right"] = ["crossed", "miswired", "wrong", "mismatch", "winding", "failed"], ["even"] = ["winding"],
        ["equal"] = ["winding"], ["balanced"] = ["winding"],
        ["good"] = [], ["fine"] = [], ["ok"] = [], ["okay"] = [], ["normal"] = [], ["healthy"] = [], ["perfect"] = [],
        ["new"] = [], ["fresh"] = [],
        ["great"] = [], ["accurate"] = [], ["perfectly"] = [], ["textbook"] = [], ["spotlessly"] = ["dirty", "blocked"],
        ["intact"] = [],
        ["mint"] = [], ["immaculate"] = [], ["pristine"] = [], ["faultless"] = [], ["undamaged"] = [], ["passes"] = [],
        ["proven"] = [], ["innocent"] = [], ["blameless"] = [], ["unobstructed"] = ["blocked"],
        ["quiet"] = ["noise", "alarm"], ["true"] = ["drift"], ["plenty"] = ["low"],
        ["live"] = ["not~power", "dead"], ["sound"] = [], ["steady"] = [], ["happy"] = [], ["nicely"] = [],
        ["lovely"] = [], ["confirmed"] = [], ["whole"] = [], ["straight"] = ["kinked", "bent"],
        ["level"] = ["not~level", "tilted"], ["charged"] = ["undercharged"], ["plugged-in"] = ["loose"],
        ["proper"] = [], ["properly"] = [], ["present"] = ["missing", "not~power"], ["home"] = ["loose"],
        ["matches"] = ["crossed", "miswired", "mismatch"],
    };

    private static readonly FrozenDictionary<string, string[]> WellMeans =
        WellWords.ToFrozenDictionary(pair => Stem(pair.Key), pair => pair.Value.Select(Stem)
            .ToArray(), StringComparer.Ordinal);


    /// <summary>Work that leaves a part behind in order.</summary>
    public static readonly FrozenSet<string> Done = new[]
    {
        "replaced", "cleaned", "washed", "flushed", "changed", "checked", "verified", "tested", "inspected",
        "eliminated",
        "reseated", "ruled", "proved", "scrubbed", "brushed", "serviced", "discounted", "dismissed", "megged", "ohmed",
        "rodded", "vacuumed", "renewed", "retightened", "rinsed", "weighed", "meggered", "excluded",
        "evacuated", "unblocked", "unclogged", "descaled", "insulated", "lagged",
    }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Parts that not every unit has.</summary>
    public static readonly FrozenSet<string> Optional = Stems("pump float trap controller module heater");

    /// <summary>
    /// Whether a word as written says that a part is well or was worked upon: the spelling must not mend it into
    /// another.
    /// </summary>
    public static bool Has(string word) => WellWords.ContainsKey(word) || Done.Contains(word);

    /// <summary>Words that are well for one part only: an open valve, a closed switch.</summary>
    public static string[]? RuledOutBy(string stem, IEnumerable<string> parts) => stem switch
    {
        "open" when parts.Contains("servic") => ["close"],
        "close" when parts.Any(part => part is "switch" or "overload" or "contact" or "float") => ["open"],
        _ => RuledOutBy(stem),
    };

    /// <summary>Verbs of a part doing its work.</summary>
    public static readonly FrozenSet<string> Working = Stems("runs works spins turns responds");

    /// <summary>
    /// The same, where the word as said is another part's name in the glossary: "the pump is pumping".
    /// </summary>
    public static readonly FrozenSet<string> AtWork =
        new[] { "pumping", "lifting", "stepping", "shifting", "draining", "pumps", "steps", "lifts", "drains", "moves",
            "slides" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>Those that tell of free movement alone.</summary>
    public static readonly FrozenSet<string> Moving = new[] { "moves", "slides" }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>What a part is not that moves.</summary>
    public static readonly FrozenSet<string> Immovable = Stems("stuck jammed seized");

    /// <summary>
    /// What healthy word <paramref name="stem"/> rules out; empty: anything. Null: it is no healthy word.
    /// </summary>
    public static string[]? RuledOutBy(string stem) => WellMeans.GetValueOrDefault(stem);

    public static bool IsWell(string stem) => WellMeans.ContainsKey(stem);

    private static FrozenSet<string> Stems(string words) =>
        Stemmer.StemAll(words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
            .ToFrozenSet(StringComparer.Ordinal);

    private static string Stem(string word) => Stemmer.StemAll([word])[0];
}
