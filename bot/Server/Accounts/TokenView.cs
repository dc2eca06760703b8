using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>A token as administrators see it.</summary>
/// <param name="Secret">Only in the answer to making it, and never again.</param>
internal sealed record TokenView(
    string Id, string Label, ImmutableArray<string> Scopes, string MadeBy, DateTimeOffset MadeAt,
    DateTimeOffset? RevokedAt,
    string? Secret = null)
{
    public static TokenView Of(ApiToken token, string? secret = null) => new(
        token.Id, token.Label, RoleNames.Of(token.Scopes), token.MadeBy, token.MadeAt, token.RevokedAt, secret);
}
