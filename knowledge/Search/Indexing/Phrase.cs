using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>One wording of one entry, analyzed.</summary>
/// <param name="Page">Place of the entry in the index.</param>
/// <param name="Words">Its words as written.</param>
internal sealed record Phrase(int Page, ImmutableArray<Word> Words, TermBag Bag);
