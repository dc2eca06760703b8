using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating;

/// <summary>
/// The physics behind the readings of one calculation: what a unit in a given condition gives to read.
/// </summary>
internal interface IReadingSource
{
    /// <summary>As a check page names it.</summary>
    string Calculation { get; }

    /// <summary>
    /// Readings, in the order the check asks for them, of a unit in the condition that a verdict speaks of.
    /// </summary>
    /// <returns>Empty when no unit can be in that condition.</returns>
    ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup);
}
