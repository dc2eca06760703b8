using System.Text.Encodings.Web;
using DxAssistant.Cases.Accounts;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace DxAssistant.Server.Accounts;

/// <summary>Another program says who it is with a token.</summary>
/// <remarks>Source, from memory: RFC 6750, section 2.1 (Authorization: Bearer).</remarks>
internal sealed class TokenHandler(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder, AccountBook book)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    private const string Prefix = "Bearer ";

    protected override Task<AuthenticateResult> HandleAuthenticateAsync() => Task.FromResult(Authenticate());

    private AuthenticateResult Authenticate()
    {
        string header = Request.Headers.Authorization.ToString();
        if (!header.StartsWith(Prefix, StringComparison.OrdinalIgnoreCase)) return AuthenticateResult.NoResult();
        if (book.FindToken(TokenText.HashOf(header[Prefix.Length..].Trim())) is not { } token)
            return AuthenticateResult.Fail("no good token");
        var person = new Person($"token {token.Id}", AccountRoles.None, token.Scopes);
        return AuthenticateResult.Success(new AuthenticationTicket(person.ToUser(Scheme.Name), Scheme.Name));
    }
}
