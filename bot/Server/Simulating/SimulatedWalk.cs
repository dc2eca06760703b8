using System.Collections.Immutable;

namespace DxAssistant.Server.Simulating;

/// <summary>One simulated walk from first words to its end.</summary>
/// <param name="Steps">Ids of the checks and repairs that were asked for, in order.</param>
/// <param name="Minutes">At the unit, access, checks, repairs and trial runs included.</param>
/// <param name="WrongParts">Parts changed for nothing.</param>
/// <param name="IsNamed">
/// Whether what was said last names the true fault: to whoever comes next, where the case is left to them.
/// </param>
internal sealed record SimulatedWalk(
    SimulatedCase Case, WalkEnd End, ImmutableArray<string> Steps, double Minutes, int Checks, int WrongParts,
    bool IsNamed);
