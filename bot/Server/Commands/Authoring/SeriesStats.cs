using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>The figures of one series.</summary>
internal sealed record SeriesStats(string Series, TestabilityReport Report);
