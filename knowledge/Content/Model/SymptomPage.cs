using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>What the unit shows or the customer reports.</summary>
public sealed record SymptomPage(SymptomId Id, Passage Title, Passage Summary, ImmutableArray<Passage> SaidAs);
