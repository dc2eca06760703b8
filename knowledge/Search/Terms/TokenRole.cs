using DxAssistant.Knowledge.Search.Clauses;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>What a token is to the search.</summary>
internal enum TokenRole
{
    /// <summary>Carries meaning.</summary>
    Main,
    /// <summary>Stands beside a glossary word: what was said, or the word without its "not".</summary>
    Aside,
    /// <summary>"the", "when", "and": no meaning alone, but clauses turn on it.</summary>
    Filler,
    /// <summary>"not the drain": named only to be ruled out.</summary>
    RuledOut,
}
