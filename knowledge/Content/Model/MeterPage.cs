using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A class of meters and what their makers promise on each range.</summary>
public sealed record MeterPage(string Id, Passage Title, Passage Summary, MeterClass Meter,
    ImmutableArray<Source> Sources);
