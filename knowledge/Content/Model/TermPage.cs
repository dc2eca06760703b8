using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A word of the trade, told to who asks what it is or where.</summary>
/// <param name="SaidAs">The names people ask for it by.</param>
/// <param name="Meaning">What it is, where it is, and what it looks like.</param>
public sealed record TermPage(string Id, Passage Title, ImmutableArray<Passage> SaidAs,
    ImmutableArray<Passage> Meaning);
