using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One concept and the words for it.</summary>
public sealed record GlossaryEntry(string Concept, ImmutableArray<string> AlsoSaidAs,
    ImmutableArray<string> OftenMisspelt);
