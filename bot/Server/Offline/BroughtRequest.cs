using System.Collections.Immutable;
using DxAssistant.Cases.Brought;

namespace DxAssistant.Server.Offline;

/// <summary>Turns as a page brings them: all since <paramref name="Basis"/>, in order.</summary>
internal sealed record BroughtRequest(long Basis, ImmutableArray<BroughtTurn> Turns)
{
    private const int MostTurns = 1000;

    public bool IsWhole => Basis >= 0 && Turns is { IsDefaultOrEmpty: false, Length: <= MostTurns }
        && Turns.All(turn => turn is { TurnId: not null, Events.IsDefaultOrEmpty: false }
            && turn.Events.All(happened => happened is not null));
}
