using System.Collections.Immutable;

namespace DxAssistant.Cases;

/// <summary>Which cases a page of the list shows.</summary>
/// <param name="Limit">How many at most; 1 or more.</param>
/// <param name="Before">
/// Only cases after this place of the list, as <see cref="CasePage.Next"/> gave it; null for the first page.
/// </param>
/// <param name="Among">Only these; null for all.</param>
public sealed record CaseQuery(int Limit, long? Before = null, ImmutableHashSet<string>? Among = null);
