using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.Extensions.Options;

namespace DxAssistant.Server.Accounts;

/// <summary>
/// While there are no accounts the server listens on this machine only, and whoever asks is its user.
/// </summary>
internal sealed class WorkstationHandler(
    IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    protected override Task<AuthenticateResult> HandleAuthenticateAsync() => Task.FromResult(AuthenticateResult.Success(
        new AuthenticationTicket(Person.AtThisMachine.ToUser(Scheme.Name), Scheme.Name)));
}
