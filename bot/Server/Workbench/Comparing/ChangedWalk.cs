using System.Collections.Immutable;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>The likeliest walk to one fault, on the old pages and on the new.</summary>
internal sealed record ChangedWalk(string Fault, ImmutableArray<string> Before, ImmutableArray<string> After);
