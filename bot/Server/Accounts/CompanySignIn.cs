using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.OpenIdConnect;
using Microsoft.IdentityModel.Protocols.OpenIdConnect;

namespace DxAssistant.Server.Accounts;

/// <summary>People sign in at their company and come back with its word for who they are.</summary>
/// <remarks>
/// Sources, from memory: OpenID Connect Core 1.0, 3.1 (code flow), 3.1.3.7 (what is checked of a token); RFC 7636
/// (PKCE). All of it is the framework's own handler.
/// </remarks>
internal static class CompanySignIn
{
    public const string Scheme = "company";

    /// <summary>Where a person is sent to their company from.</summary>
    public const string Path = "/sign-in/company";

    /// <summary>Where they come back to; the company has to know this address.</summary>
    public const string Back = Path + "/back";

    private const string TurnedAway = "/sign-in?refused=company";
    private const string Away = "/sign-in?refused=away";

    public static void AddTo(AuthenticationBuilder schemes, CompanySettings company)
    {
        schemes.Services.AddSingleton(company).AddSingleton<CompanyAccounts>();
        schemes.AddOpenIdConnect(Scheme, options => Configure(options, company));
    }

    /// <summary>Where there is no such sign-in, there is no such address.</summary>
    public static void Map(WebApplication app)
    {
        if (app.Services.GetRequiredService<ServerSettings>().Company is not null) app.MapGet(Path, AskAsync);
    }

    private static async Task AskAsync(HttpContext http, string? then)
    {
        try
        {
            await http.ChallengeAsync(Scheme, new AuthenticationProperties { RedirectUri = Onward(then) });
        }
        catch (InvalidOperationException)
        {
            // Its description could not be read; the next request asks for it anew.
            http.Response.Redirect(Away);
        }
    }

    // The cookie of the session is not sent along with the way back from another site: the page there asks anew, and
    // goes on.
    private static string Onward(string? then) => "/sign-in?then=" + Uri.EscapeDataString(then ?? "/");

    private static void Configure(OpenIdConnectOptions options, CompanySettings company)
    {
        (options.ClientId, options.ClientSecret) = (company.Client, company.Secret);
        options.ConfigurationManager = CompanyDescription.Kept(company.Issuer);
        (options.ResponseType, options.ResponseMode, options.UsePkce) =
            (OpenIdConnectResponseType.Code, OpenIdConnectResponseMode.Query, true);
        (options.SignInScheme, options.CallbackPath, options.MapInboundClaims) = (Schemes.Session, Back, false);
        foreach (string scope in company.Scopes) options.Scope.Add(scope);
        foreach (var cookie in new[] { options.CorrelationCookie, options.NonceCookie })
            (cookie.SameSite, cookie.SecurePolicy) = (SameSiteMode.Lax, CookieSecurePolicy.SameAsRequest);
        options.Events.OnTokenValidated = LetInAsync;
        options.Events.OnRemoteFailure = TurnAwayAsync;
    }

    private static Task LetInAsync(TokenValidatedContext context)
    {
        var services = context.HttpContext.RequestServices;

        // The handler takes an unsigned token in this flow, as OpenID Connect Core 3.1.3.7 allows; this program does
        // not.
        if (context.SecurityToken.RawSignature.Length == 0)
            context.Fail("the token is not signed");
        else if (services.GetRequiredService<CompanyAccounts>()
            .LetIn(context.SecurityToken.Issuer, context.Principal!) is { } account)
            context.Principal = services.GetRequiredService<Sessions>().UserOf(account);
        else
            context.Fail("there is no account for that person");
        return Task.CompletedTask;
    }

    private static Task TurnAwayAsync(RemoteFailureContext context)
    {
        context.HandleResponse();
        context.Response.Redirect(TurnedAway);
        return Task.CompletedTask;
    }
}
