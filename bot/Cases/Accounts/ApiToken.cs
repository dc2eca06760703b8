namespace DxAssistant.Cases.Accounts;

/// <summary>The right of another program to ask in place of a person.</summary>
/// <param name="Id">Its public name, with which it is revoked.</param>
/// <param name="Label">What it is for, in the words of whoever made it.</param>
/// <param name="MadeBy">The account that made it.</param>
/// <param name="RevokedAt">UTC; null while it is good.</param>
public sealed record ApiToken(
    string Id, string Label, TokenScopes Scopes, string MadeBy, DateTimeOffset MadeAt, DateTimeOffset? RevokedAt);
