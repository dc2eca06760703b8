using System.Collections.Immutable;
using System.CommandLine;
using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands.Settings;

/// <summary>The options that let people sign in at their company.</summary>
internal sealed class CompanyOption
{
    private readonly Option<string?> issuer = new("--company")
    {
        Description =
            $"Where people sign in with their company (OpenID Connect issuer); the secret of this program in {CompanySettings.SecretVariable}.",
        HelpName = "URL",
    };

    private readonly Option<string?> client = new("--company-client")
    {
        Description = "The name under which the company's sign-in knows this program.", HelpName = "ID",
    };

    private readonly Option<string> name = new("--company-name")
    {
        Description = "Which of the company's words about a person is the name of the account here.",
        HelpName = "CLAIM",
        DefaultValueFactory = _ => "preferred_username",
    };

    private readonly Option<string?> groups = new("--company-groups")
    {
        Description =
            "Which of the company's words about a person say what they may do here; accounts are then made when people "
                + "first come.", HelpName = "CLAIM",
    };

    private readonly Option<string[]> role = new("--company-role")
    {
        Description = $"What one of those words allows: {RoleNames.All<AccountRoles>()}. May be given several times.",
        HelpName = "WORD=ROLE",
    };

    private readonly Option<string[]> scope = new("--company-scope")
    {
        Description = "What is asked of the company besides openid and profile. May be given several times.",
        HelpName = "SCOPE",
    };

    public void AddTo(Command command)
    {
        foreach (Option option in new Option[] { issuer, client, name, groups, role, scope }) command.Add(option);
    }

    /// <returns>What is wrong with the call; null when nothing is.</returns>
    public string? Read(ParseResult call, ref ServerSettings settings)
    {
        if (call.GetValue(issuer) is not { } address)
            return call.GetValue(client) is null && call.GetValue(groups) is null
                ? null
                : "say where people sign in with their company: --company URL";
        if (!Uri.TryCreate(address, UriKind.Absolute, out var url)
            || !(url.Scheme == Uri.UriSchemeHttps || (url.Scheme == Uri.UriSchemeHttp && url.IsLoopback)))
            return $"{address} is not a company's sign-in: give it as https://host/";
        if (call.GetValue(client) is not { Length: > 0 } id)
            return "say under which name the company's sign-in knows this program: --company-client ID";
        if (Roles(call.GetValue(role) ?? [], out var roles) is { } odd) return odd;
        if (call.GetValue(groups) is null != roles.IsEmpty)
            return "--company-groups CLAIM and --company-role WORD=ROLE belong together: give both, or neither";
        settings = settings with
        {
            Company = new CompanySettings(url, id, Environment.GetEnvironmentVariable(CompanySettings.SecretVariable))
            {
                NameClaim = call.GetValue(name)!, RolesClaim = call.GetValue(groups), Roles = roles,
                Scopes = [.. call.GetValue(scope) ?? []],
            },
        };
        return null;
    }

    private static string? Roles(string[] written, out ImmutableDictionary<string, AccountRoles> roles)
    {
        roles = ImmutableDictionary.Create<string, AccountRoles>(StringComparer.Ordinal);
        foreach (string one in written)
        {
            int equals = one.LastIndexOf('=');
            var allows = RoleNames.Roles([one[(equals + 1)..]], out string? unknown);
            if (equals < 1 || unknown is not null || allows == AccountRoles.None)
                return $"{one} is not WORD=ROLE: the role is one of {RoleNames.All<AccountRoles>()}";
            roles = roles.SetItem(one[..equals], roles.GetValueOrDefault(one[..equals]) | allows);
        }

        return null;
    }
}
