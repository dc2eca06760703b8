using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Learning;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>What a search index is put together from.</summary>
/// <param name="Phrases">Wordings with a meaning to search for.</param>
/// <param name="Idle">Wordings of fillers alone, like "hello": found only as they stand.</param>
/// <param name="Models">By kind what was learnt of its pages.</param>
/// <param name="Intentions">What was learnt of the kinds of messages.</param>
internal sealed record IndexParts(
    TradeAnalyzer Analyzer, ImmutableArray<Phrase> Phrases, ImmutableArray<Phrase> Idle, PlainScores Plain,
    Vocabulary Vocabulary, Closeness Closeness,
    Wordings Wordings, Features Features, Dictionary<NodeKind, WordingModel> Models, WordingModel Intentions);
