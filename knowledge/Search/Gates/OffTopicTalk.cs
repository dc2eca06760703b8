using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>Tells talk that is none of this trade's from complaints about a unit.</summary>
internal sealed class OffTopicTalk(SearchIndex index)
{
    /// <summary>First term of the glossary's concepts "unrelated equipment" and "unrelated talk".</summary>
    private static readonly string Unrelated = Stemmer.StemAll(["unrelated"])[0];

    private static readonly string Talk = Stemmer.StemAll(["talk"])[0];

    /// <summary>Words before another machine that make it a mere place or comparison.</summary>
    private static readonly string[] Beside =
    [
        "over", "above", "behind", "on", "onto", "near", "next", "beside", "under", "below", "by", "from", "into",
        "like", "with", "through",
        "to", "when", "off", "around", "against", "than", "neighbor", "whenever", "while", "in", "at", "for",
    ];

    /// <summary>Words that only our own equipment goes by.</summary>
    private static readonly string[] Ours =
        ["ac", "aircon", "hvac", "split", "splits", "unit", "units", "condenser", "head", "heads", "cassette", "remote",
            "handset", "fins", "heatpump", "indoor", "outdoor",
         "clicker", "zapper", "minisplit", "evaporator", "contactor", "relay", "pcb"];

    /// <summary>
    /// Words after another machine that make it what a part of ours looks like: "the radiator thing inside".
    /// </summary>
    private static readonly string[] Alike = ["bit", "bits", "thing", "things", "part", "parts", "like", "looking"];

    /// <summary>Parts among them that a boiler or a cold room has as well.</summary>
    private static readonly string[] OfOthersToo = ["evaporator", "contactor", "relay", "pcb"];

    /// <summary>What has a head too: "group head", "shower head".</summary>
    private static readonly string[] OtherHeads = ["group", "shower", "print", "printer", "cylinder", "over", "drill",
        "sprinkler", "bed", "hammer", "tape", "my", "your", "his", "her"];

    /// <summary>
    /// Words before another machine that make it what a trouble comes down to: "the noise was just the neighbor's
    /// mower".
    /// </summary>
    private static readonly string[] Merely = ["just", "only", "merely"];

    private static readonly string[] Being = ["is", "was", "were", "be", "been"];

    private static readonly string[] Owners =
        ["my", "the", "our", "his", "her", "their", "a", "an", "this", "that", "old", "new"];

    private static readonly string[] Within = ["in", "of", "inside"];

    /// <summary>The probability that a message is none of this trade's.</summary>
    public static double ProbabilityOf(HeardMessage message) =>
        message.Said.Said.IsEmpty ? 1 : IsComplaint(message.Intention, message.Hearing)
            ? 0
            : TradeGate.OfOtherTalk(message);

    /// <summary>
    /// Whether the build of a message tells that it is about no trouble of a unit, whatever parts it names.
    /// </summary>
    public static bool IsOutright(HeardMessage message) =>
        (IsOtherMachines(message.Request, message.Tokens) && !SaysOtherIsWell(message.Reading))
            || SettledTalk.Is(message.Request) || SafetyTalk.Asks(message.Request, message.DangerRule is not null)
            || PersonTalk.Is(message.Request)
        || Errands.Is(message.Request, message.Tokens)
        || (message.Hearing.AsksOnly && !PlainQuestions.IsPlea(message.Request));

    /// <summary>"the router is fine, the stick hangs out of its slot".</summary>
    private static bool SaysOtherIsWell(ClauseReading reading) =>
        reading.RuledOut.Any(mention => mention.Tokens.Any(token => token.Term == Unrelated)
            && mention.Tokens.Any(token => States.IsWell(token.Term) || token.IsNegated));

    /// <summary>
    /// "the oven's thermostat", "boiler pcb gone again", "drain in my kitchen sink": the trouble is another machine's
    /// when that comes first, or has the part that came first, and nothing of ours is named.
    /// </summary>
    private static bool IsOtherMachines(RequestWords words, ImmutableArray<Token> tokens)
    {
        var place = Enumerable.Range(0, tokens.Length)
            .FirstOrDefault(place => tokens[place].Term == Unrelated && tokens[place].Role == TokenRole.Main
                && tokens[place + 1].Term != Talk, -1);
        if (place < 0)
            return false;
        var (at, after) =
            (tokens[place].Position, tokens[place].Position + tokens[place].Said.Count(letter => letter == ' ') + 1);
        return !Alike.Contains(words[after])
            && !OursIn(words).Any(ours => (ours < at || ours > after) && !OfOthersToo.Contains(words[ours]))
            && (ComesFirst(words, tokens, at)
                || Enumerable.Range(Math.Max(1, at - 4), Math.Min(4, Math.Max(0, at - 1)))
                    .Any(before => Merely.Contains(words[before]) && Being.Contains(words[before - 1]))
                || (at >= 2 && Within.Contains(words[at - 2]) && Owners.Contains(words[at - 1])));
    }

    /// <summary>
    /// Whether nothing that the glossary knows stands before a machine, nor a word that makes it a place, nor a clause
    /// of its own: "that noisy dishwasher".
    /// </summary>
    private static bool ComesFirst(RequestWords words, ImmutableArray<Token> tokens, int at) =>
        Enumerable.Range(0, at).All(place => Owners.Contains(words[place]))
        || (!IsBeside(words, at)
            && !tokens.Any(token => token.StartsClause && token.Position > 0 && token.Position <= at)
            && !tokens.Any(token => token is { IsConcept: true, Role: TokenRole.Main } && token.Position < at));

    /// <summary>"barely cooling" is short, but its words are of the trade and of nothing else.</summary>
    private static bool IsComplaint(Intention intention, Hearing heard) =>
        heard is { SaysEnough: true, NamesAnotherMachine: false, AsksOnly: false, Known: 1,
            Best: >= MatchThresholds.CloseFit }
        && intention.Trade >= MatchThresholds.ClearlyTrade * intention.OffTopic;

    /// <summary>
    /// The page of talk that fits best, or null if none comes near; what is said in fillers alone must stand in it.
    /// </summary>
    public string? Page(HeardMessage message)
    {
        if (message.Whole.Said.IsEmpty)
            return index.Holding(message.Words, NodeKind.OffTopic).FirstOrDefault();
        var talk = index.Find(message.Whole, NodeKind.OffTopic);
        return talk.Length > 0 && talk[0].Score >= MatchThresholds.FaintestTalk ? talk[0].Entry.Id : null;
    }

    /// <summary>Whether a word names a unit as only our own equipment is named.</summary>
    public static bool NamesOurs(RequestWords words) => OursIn(words).Any();

    /// <summary>Where such words stand: not "a split" in "not a split", nor the head of a shower.</summary>
    private static IEnumerable<int> OursIn(RequestWords words) => Enumerable.Range(0, words.Count).Where(place =>
        Ours.Contains(words[place]) && words[place - 1] != "not" && words[place - 2] != "not"
            && !(words[place] is "head" or "heads" && OtherHeads.Contains(words[place - 1])));

    /// <summary>Whether a machine of another trade is what the message is about.</summary>
    public static bool NamesAnotherMachine(RequestWords words, ImmutableArray<Token> tokens) =>
        OtherMachineAt(words, tokens) >= 0;

    /// <summary>The word at which a machine of another trade is named; −1 for none.</summary>
    private static int OtherMachineAt(RequestWords words, ImmutableArray<Token> tokens) =>
        tokens.Where((token, at) => token.Term == Unrelated && token.Role == TokenRole.Main
            && (tokens[at + 1].Term == Talk || !IsBeside(words, token.Position))).Select(token => token.Position)
            .FirstOrDefault(-1);

    private static bool IsBeside(RequestWords words, int position)
    {
        for (var i = Math.Max(0, position - 3); i < Math.Min(position, words.Count); i++)
        {
            if (Beside.Contains(words[i]))
                return true;
        }
        return false;
    }
}
