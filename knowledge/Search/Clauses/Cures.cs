using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>
/// Work after which all was well: "reseated the plug and it runs" names the fault and does not rule it out.
/// </summary>
internal static class Cures
{
    private static readonly FrozenSet<string> Well =
        new[] { "runs", "ran", "works", "worked", "responds", "cools", "heats", "spins", "starts", "started", "back",
            "peace" }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly string[] Turns = ["but", "still", "yet", "until", "then"];

    /// <summary>
    /// The word by which a message says that all is well since; −1 when it does not, or turns afterwards.
    /// </summary>
    public static int At(ImmutableArray<Token> tokens)
    {
        for (var at = tokens.Length - 1; at > 1 && !Turns.Contains(tokens[at].Said); at--)
        {
            if (Well.Contains(tokens[at].Said) && !tokens[at].IsNegated && Leads(tokens, at))
                return tokens[at].Position;
        }
        return -1;
    }

    /// <summary>"and it runs", "fan now runs", "came right back".</summary>
    private static bool Leads(ImmutableArray<Token> tokens, int at) =>
        tokens[at].Said switch
        {
            "back" => tokens.Take(at).TakeLast(2).Any(token => token.Said is "came" or "come"),
            "peace" => tokens[at - 1].Said == "and",
            _ => tokens.Take(at).TakeLast(2).Any(token => token.Said == "now")
                || (tokens[at - 1].Said == "it" && tokens[at - 2].Said == "and"),
        };
}
