using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Sensors;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A sensor's resistance against temperature.</summary>
public sealed record CurvePage(string Id, Passage Title, Passage Summary, SensorCurve Curve,
    ImmutableArray<Source> Sources);
