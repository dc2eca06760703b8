namespace DxAssistant.Server.Chat;

/// <summary>The answer to a turn.</summary>
/// <param name="Last">The last sequence number of the case now; later than the turn's own when it was a retry.</param>
internal sealed record TurnTaken(TurnView Turn, long Last, SheetHead Head);
