using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>A fault or check that a message says is not the trouble.</summary>
/// <param name="Kind">Fault or Check.</param>
/// <param name="Said">The words that say so.</param>
public sealed record DeniedMention(NodeKind Kind, string Id, string Said);
