using DxAssistant.Cases.Accounts;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;

namespace DxAssistant.Server.Accounts;

/// <summary>The ways in which a request says who asks: a session of the browser, a token, or being at this machine.</summary>
internal static class Schemes
{
    public const string Session = "session";
    public const string Token = "token";
    public const string Workstation = "workstation";
    private const string Choice = "choice";
    private static readonly TimeSpan SessionLasts = TimeSpan.FromHours(12);

    public static void AddTo(IServiceCollection services, AccountBook book) => services
        .AddSingleton(book)
        .AddSingleton<SignIn>()
        .AddSingleton<CaseGrants>()
        .AddAuthentication(Choice)
        .AddPolicyScheme(Choice, null, options => options.ForwardDefaultSelector = http => Of(http, book))
        .AddScheme<AuthenticationSchemeOptions, WorkstationHandler>(Workstation, null)
        .AddScheme<AuthenticationSchemeOptions, TokenHandler>(Token, null)
        .AddCookie(Session, Configure);

    private static string Of(HttpContext http, AccountBook book) =>
        !book.HasAccounts ? Workstation : http.Request.Headers.Authorization.Count > 0 ? Token : Session;

    private static void Configure(CookieAuthenticationOptions options)
    {
        options.Cookie.Name = "dxassistant";
        options.Cookie.HttpOnly = true;
        options.Cookie.SameSite = SameSiteMode.Strict;
        options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        options.ExpireTimeSpan = SessionLasts;
        options.SlidingExpiration = true;
        options.Events.OnValidatePrincipal = StillGoodAsync;
    }

    // A session ends at once when the password or the roles change, or the account is closed.
    private static Task StillGoodAsync(CookieValidatePrincipalContext context)
    {
        var book = context.HttpContext.RequestServices.GetRequiredService<AccountBook>();
        var account = book.Find(context.Principal?.Identity?.Name ?? "");
        if (account is not { IsOpen: true } || account.Stamp != Person.StampOf(context.Principal))
            context.RejectPrincipal();
        return Task.CompletedTask;
    }
}
