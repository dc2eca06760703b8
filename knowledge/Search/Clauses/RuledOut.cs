using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>One thing a message rules out.</summary>
/// <param name="Tokens">The words about it.</param>
/// <param name="States">What it is said not to be, as stems; empty: nothing is wrong with it.</param>
internal sealed record RuledOut(ImmutableArray<Token> Tokens, ImmutableArray<string> States)
{
    /// <summary>It is denied in so many words ("not jammed", "not the filter"), and not only said to be well.</summary>
    public bool IsOutright { get; init; }
}
