using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>One page as the search sees it.</summary>
/// <param name="Phrases">How people say it, one phrase each.</param>
/// <param name="Body">The summary and what is seen and measured; plain text.</param>
public sealed record SearchEntry(
    NodeKind Kind, string Id, string Title, ImmutableArray<string> Phrases, string Body);
