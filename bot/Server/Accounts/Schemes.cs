using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;

namespace DxAssistant.Server.Accounts;

/// <summary>
/// The ways in which a request says who asks: a session of the browser, a token, or being at this machine.
/// </summary>
internal static class Schemes
{
    public const string Session = "session";
    public const string Token = "token";
    public const string Workstation = "workstation";
    private const string Choice = "choice";

    // A working day; used or not, a session is over after SessionBook.Longest.
    private static readonly TimeSpan SessionLasts = TimeSpan.FromHours(12);

    public static void AddTo(IServiceCollection services, AccountBook book, ServerSettings settings)
    {
        KeptKeys.AddTo(services, book);
        var schemes = services
            .AddSingleton(book)
            .AddSingleton<SignIn>()
            .AddSingleton<Sessions>()
            .AddSingleton<CaseGrants>()
            .AddAuthentication(Choice)
            .AddPolicyScheme(Choice, null, options => options.ForwardDefaultSelector = http => Of(http, book))
            .AddScheme<AuthenticationSchemeOptions, WorkstationHandler>(Workstation, null)
            .AddScheme<AuthenticationSchemeOptions, TokenHandler>(Token, null)
            .AddCookie(Session, options => Configure(options, settings.IsSafe));
        if (settings.Company is { } company) CompanySignIn.AddTo(schemes, company);
    }

    private static string Of(HttpContext http, AccountBook book) =>
        !book.HasAccounts ? Workstation : http.Request.Headers.Authorization.Count > 0 ? Token : Session;

    /// <param name="safe">
    /// Whether browsers come by HTTPS alone; then the name promises that no other host set the cookie
    /// (RFC 6265bis, 4.1.3.2).
    /// </param>
    private static void Configure(CookieAuthenticationOptions options, bool safe)
    {
        options.Cookie.Name = safe ? "__Host-dxassistant" : "dxassistant";
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Strict;
        options.Cookie.SecurePolicy = safe ? CookieSecurePolicy.Always : CookieSecurePolicy.SameAsRequest;
        options.ExpireTimeSpan = SessionLasts;
        options.SlidingExpiration = true;
        options.Events.OnValidatePrincipal = StillGoodAsync;
    }

    private static Task StillGoodAsync(CookieValidatePrincipalContext context)
    {
        if (!context.HttpContext.RequestServices.GetRequiredService<Sessions>().GoesOn(context.Principal))
            context.RejectPrincipal();
        return Task.CompletedTask;
    }
}
