using Microsoft.IdentityModel.Protocols;
using Microsoft.IdentityModel.Protocols.OpenIdConnect;

namespace DxAssistant.Server.Accounts;

/// <summary>Reads what a company's sign-in says of itself, and takes it only when it fits.</summary>
/// <remarks>
/// Source, from memory: OpenID Connect Discovery 1.0, 4.3 (the issuer named there is the one that was asked), 3 (what
/// it has to name).
/// </remarks>
internal sealed class CompanyDescription(Uri issuer) : IConfigurationRetriever<OpenIdConnectConfiguration>
{
    private const string Place = ".well-known/openid-configuration";

    /// <summary>The description, read when it is first needed and anew from time to time.</summary>
    public static ConfigurationManager<OpenIdConnectConfiguration> Kept(Uri issuer) =>
        new(AddressOf(issuer), new CompanyDescription(issuer), Documents(issuer));

    /// <summary>Looks whether people can be sent there.</summary>
    /// <returns>What is wrong with it, with the remedy; null when nothing is. And whether it answered at all.</returns>
    public static async Task<(string? Wrong, bool Answered)> LookAsync(Uri issuer, CancellationToken cancel)
    {
        try
        {
            var read = await OpenIdConnectConfigurationRetriever.GetAsync(AddressOf(issuer), Documents(issuer), cancel);
            return (Problem(issuer, read), true);
        }
        catch (Exception error) when (error is IOException or InvalidOperationException or ArgumentException)
        {
            return ($"no description of a sign-in can be read at {AddressOf(issuer)}: {Innermost(error)}", false);
        }
    }

    public async Task<OpenIdConnectConfiguration> GetConfigurationAsync(string address, IDocumentRetriever retriever,
        CancellationToken cancel)
    {
        var read = await OpenIdConnectConfigurationRetriever.GetAsync(address, retriever, cancel);
        return Problem(issuer, read) is { } problem ? throw new InvalidOperationException(problem) : read;
    }

    private static string? Problem(Uri issuer, OpenIdConnectConfiguration read)
    {
        if (read.Issuer?.TrimEnd('/') != Plain(issuer))
            return $"the sign-in at {issuer} calls itself {read.Issuer ?? "nothing"}: give that as --company, if it is yours";
        if (string.IsNullOrEmpty(read.AuthorizationEndpoint) || string.IsNullOrEmpty(read.TokenEndpoint))
            return $"the sign-in at {issuer} names no place to send people to or to fetch their token from: it is no OpenID Connect provider for web programs";
        if (read.ResponseTypesSupported.Count > 0
            && !read.ResponseTypesSupported.Contains(OpenIdConnectResponseType.Code))
            return $"the sign-in at {issuer} does not offer the code flow: have whoever keeps it allow \"code\"";
        return read.SigningKeys.Count == 0
            ? $"the sign-in at {issuer} names no keys by which its tokens could be checked"
            : null;
    }

    private static string AddressOf(Uri issuer) => $"{Plain(issuer)}/{Place}";

    private static string Plain(Uri issuer) => issuer.ToString().TrimEnd('/');

    // In clear only on this machine itself, for trying it out.
    private static HttpDocumentRetriever Documents(Uri issuer) =>
        new(new HttpClient { Timeout = TimeSpan.FromSeconds(10) }) { RequireHttps = !issuer.IsLoopback };

    private static string Innermost(Exception error) =>
        error.InnerException is { } inner ? Innermost(inner) : error.Message.ReplaceLineEndings(" ");
}
