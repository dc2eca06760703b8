using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content;

/// <summary>What the book of rules says of one rule.</summary>
/// <param name="Name">The name that diagnostics carry, for example <c>missing-source</c>.</param>
/// <param name="Meaning">The bad thing in a sentence.</param>
/// <param name="Examples">What is wrong and the same put right, one pair for each kind of mistake; never empty.</param>
public sealed record RuleEntry(string Name, string Meaning, ImmutableArray<RuleEntryExample> Examples);
