using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>
/// What a charge and a vacuum rule out when they are right: "gas weighed in" neither too little nor too much, "proper
/// vacuum" air.
/// </summary>
internal static class Charging
{
    private static readonly string Refrigerant = Stemmer.StemAll(["refrigerant"])[0];

    private static readonly RuledOut NeitherLowNorHigh = new([], [.. Stemmer.StemAll(["undercharged", "overcharged"])])
    {
        IsOutright = true,
    };

    /// <summary>By the word that only "non condensables" has in a title.</summary>
    private static readonly RuledOut NoAir = new([], ["non"]) { IsOutright = true };

    /// <param name="word">The word that says that something is well.</param>
    /// <param name="scope">What it says so of.</param>
    public static IEnumerable<RuledOut> DoneRight(Token word, List<Token> scope)
    {
        if (word.IsNegated || word.Role != TokenRole.Main
            || !(States.IsWell(word.Term) || States.Done.Contains(word.Said)))
            yield break;
        if (word.Said is not ("new" or "checked" or "changed" or "replaced")
            && scope.Any(token => token.Term == Refrigerant) && !scope.Any(token => States.Ill.Contains(token.Term)))
            yield return NeitherLowNorHigh;
        if (scope.Any(IsVacuum))
            yield return NoAir;
    }

    /// <summary>"proper vacuum": the word by which the glossary knows it is a trouble, and a vacuum is none.</summary>
    public static bool IsVacuum(List<Token> clause, Token token) =>
        clause.Any(other => other.Position == token.Position && IsVacuum(other));

    private static bool IsVacuum(Token token) =>
        token.Said.Contains("vacuum", StringComparison.Ordinal) || token.Said is "evacuated" or "evacuation";
}
