using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>How the unit must stand, and the steps to bring it there safely.</summary>
public sealed record AccessPage(
    AccessId Id,
    Passage Title,
    Passage Summary,
    Role Who,
    ImmutableArray<AccessStep> Steps,
    ImmutableArray<CautionPage> Cautions);
