using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings.Units;

/// <summary>What a spelling of a unit can mean.</summary>
/// <param name="Meanings">Likeliest first.</param>
/// <param name="Use">When the spelling is a unit at all.</param>
internal sealed record UnitEntry(ImmutableArray<Unit> Meanings, UnitUse Use = UnitUse.Always);
