using System.Collections.Concurrent;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.Logging;
using Microsoft.IdentityModel.JsonWebTokens;
using Microsoft.IdentityModel.Tokens;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>A company's sign-in on this machine, which takes everybody for one and the same person.</summary>
/// <remarks>Sources, from memory: OpenID Connect Core 1.0, 3.1; Discovery 1.0, 3; RFC 7636, 4.6; RFC 7517.</remarks>
internal sealed class Issuer : IAsyncDisposable
{
    public const string Client = "dx";
    public const string Secret = "a secret of both";

    private static readonly string[] Flows = ["code"];
    private static readonly string[] Subjects = ["public"];
    private static readonly string[] Algorithms = [SecurityAlgorithms.RsaSha256];

    private readonly RSA rsa = RSA.Create(2048);
    private readonly RSA another = RSA.Create(2048);
    private readonly ConcurrentDictionary<string, (string Nonce, string Challenge)> codes = new(StringComparer.Ordinal);
    private readonly WebApplication app;

    private Issuer(WebApplication app) => this.app = app;

    public Uri Address => new(app.Urls.First());

    /// <summary>Whom it takes everybody for, by the name that it may give to others.</summary>
    public string Person { get; set; } = "tom";

    /// <summary>What it calls that person among its own.</summary>
    public string Subject { get; set; } = "s-1";

    /// <summary>The groups of that person.</summary>
    public string[] Groups { get; set; } = [];

    /// <summary>What is wrong with its tokens.</summary>
    public Twist Twist { get; set; }

    /// <summary>What it calls itself; null for its true address.</summary>
    public string? CalledOtherwise { get; set; }

    public static async Task<Issuer> StartAsync()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.SetMinimumLevel(LogLevel.None);
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        var issuer = new Issuer(builder.Build());
        issuer.Map();
        await issuer.app.StartAsync();
        return issuer;
    }

    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        rsa.Dispose();
        another.Dispose();
    }

    private string Name => Address.ToString().TrimEnd('/');

    private void Map()
    {
        app.MapGet("/.well-known/openid-configuration", () => Results.Json(new Dictionary<string, object>
        {
            ["issuer"] = CalledOtherwise ?? Name, ["authorization_endpoint"] = $"{Name}/ask",
            ["token_endpoint"] = $"{Name}/token", ["jwks_uri"] = $"{Name}/keys",
            ["response_types_supported"] = Flows, ["subject_types_supported"] = Subjects,
            ["id_token_signing_alg_values_supported"] = Algorithms,
        }));
        app.MapGet("/keys", () => Results.Json(new { keys = new[] { Public() } }));
        app.MapGet("/ask", Ask);
        app.MapPost("/token", TokenAsync);
    }

    // Nobody comes without PKCE.
    private IResult Ask(HttpRequest request)
    {
        if (request.Query["code_challenge_method"] != "S256" || request.Query["response_type"] != "code")
            return Results.BadRequest();
        string code = Guid.NewGuid().ToString("N");
        codes[code] = (request.Query["nonce"].ToString(), request.Query["code_challenge"].ToString());
        return Results.Redirect(
            $"{request.Query["redirect_uri"]}?code={code}&state={Uri.EscapeDataString(request.Query["state"].ToString())}");
    }

    private async Task<IResult> TokenAsync(HttpRequest request)
    {
        var form = await request.ReadFormAsync();
        bool fits = codes.TryRemove(form["code"].ToString(), out var asked) && form["client_secret"] == Secret
            && Base64UrlEncoder.Encode(
                SHA256.HashData(Encoding.ASCII.GetBytes(form["code_verifier"].ToString()))) == asked.Challenge;
        return fits && Twist != Twist.Code
            ? Results.Json(
                new { access_token = "none", token_type = "Bearer", expires_in = 60, id_token = Token(asked.Nonce) })
            : Results.Json(new { error = "invalid_grant" }, statusCode: StatusCodes.Status400BadRequest);
    }

    private string Token(string nonce) =>
        new JsonWebTokenHandler { SetDefaultTimesOnTokenCreation = false }.CreateToken(new SecurityTokenDescriptor
        {
            Issuer = Twist == Twist.Issuer ? "https://elsewhere.example" : Name,
            Audience = Twist == Twist.Audience ? "another program" : Client,
            IssuedAt = DateTime.UtcNow.AddHours(-1),
            Expires = DateTime.UtcNow.AddMinutes(Twist == Twist.Time ? -30 : 1),
            SigningCredentials = Twist == Twist.NoSignature ? null
                : new SigningCredentials(new RsaSecurityKey(Twist == Twist.Signature ? another : rsa)
                {
                    KeyId = "k1",
                }, SecurityAlgorithms.RsaSha256),
            Claims = new Dictionary<string, object>
            {
                ["sub"] = Subject, ["preferred_username"] = Person, ["groups"] = Groups,
                ["nonce"] = Twist == Twist.Nonce ? "another" : nonce,
            },
        });

    private object Public()
    {
        var key = rsa.ExportParameters(false);
        return new { kty = "RSA", use = "sig", kid = "k1", alg = "RS256", n = Base64UrlEncoder.Encode(key.Modulus),
            e = Base64UrlEncoder.Encode(key.Exponent) };
    }
}
