using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>One line of the glossary: a concept and the other ways to say and to misspell it.</summary>
public sealed record SynonymGroup(
    string Concept, ImmutableArray<string> Synonyms, ImmutableArray<string> Misspellings);
