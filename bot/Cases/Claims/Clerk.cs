namespace DxAssistant.Cases.Claims;

/// <summary>Who acts on a claim.</summary>
/// <param name="MayOverride">Whether they may make a claim ready although something is missing.</param>
/// <param name="MayDecide">Whether they may approve, decline and return.</param>
public sealed record Clerk(string Name, bool MayOverride, bool MayDecide);
