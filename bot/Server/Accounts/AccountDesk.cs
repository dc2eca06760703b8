using System.Collections.Immutable;
using System.Security.Cryptography;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>
/// Changes of accounts and tokens, each with its audit line; the same for the command and for the page.
/// </summary>
/// <remarks>Each change gives null when it is done, else one line that says why not.</remarks>
internal sealed class AccountDesk(AccountBook book, SignIn signIn, TimeProvider clock)
{
    private const int LongestLabel = 100;

    /// <summary>Adds an account. The first one must be an administrator's, or nobody could add the second.</summary>
    /// <param name="password">Null for a person who signs in at the company only.</param>
    public string? Add(string by, string? typedName, IEnumerable<string> roleNames, string? password)
    {
        if (AccountName.Read(typedName) is not { } name) return $"{typedName} is not a name: {AccountName.Form}.";
        var roles = RoleNames.Roles(roleNames, out string? unknown);
        if (unknown is not null || roles == AccountRoles.None) return NoRole(unknown);
        if (!book.HasAccounts && !roles.HasFlag(AccountRoles.Administrator))
            return "The first account must be an administrator's: give it the role administrator.";
        if (password is null && !book.HasAccounts)
            return "The first account has a password: the company's sign-in may be away one day.";
        if (password is not null && SignIn.Problem(password) is { } problem) return problem;
        if (!book.Add(SignIn.Make(name, roles, password))) return $"There is an account {name} already.";
        book.Note(by, "added account", name);
        return null;
    }

    /// <summary>Changes the password; all sessions of the account end.</summary>
    public string? SetPassword(string by, string name, string password) => SignIn.Problem(password)
        ?? Change(by, "changed password", name, account => account, password);

    /// <summary>Changes the roles; all sessions of the account end.</summary>
    public string? SetRoles(string by, string name, IEnumerable<string> roleNames)
    {
        var roles = RoleNames.Roles(roleNames, out string? unknown);
        if (unknown is not null || roles == AccountRoles.None) return NoRole(unknown);
        if (!roles.HasFlag(AccountRoles.Administrator) && IsLastAdministrator(name)) return LastOne(name);
        return Change(by, "changed roles", name, account => account with { Roles = roles });
    }

    /// <summary>
    /// Closes or opens an account; closed, it cannot sign in and its sessions end. Opened again it is that of whoever
    /// comes next with its name from the company.
    /// </summary>
    public string? SetOpen(string by, string name, bool open)
    {
        if (!open && IsLastAdministrator(name)) return LastOne(name);
        if (!open) book.Company.Forget(name);
        return Change(by, open ? "opened account" : "closed account", name, account => account with { IsOpen = open });
    }

    /// <summary>Makes a token.</summary>
    /// <param name="id">As <see cref="NewTokenId"/> gives it.</param>
    /// <param name="problem">Why none was made; null when one was.</param>
    /// <returns>The token with its secret, which is shown this once.</returns>
    public TokenView? MakeToken(string by, string id, string? label, IEnumerable<string> scopeNames,
        out string? problem)
    {
        var scopes = RoleNames.Scopes(scopeNames, out string? unknown);
        string text = (label ?? "").Trim();
        problem = text.Length is 0 or > LongestLabel ? "Say in a few words what the token is for."
            : unknown is not null || scopes == TokenScopes.None
                ? $"{unknown ?? "Nothing"} is not what a token may do: choose of {RoleNames.All<TokenScopes>()}."
                : null;
        if (problem is not null) return null;
        string secret = TokenText.New();
        var token = new ApiToken(id, text, scopes, by, clock.GetUtcNow(), null);
        book.AddToken(token, TokenText.HashOf(secret));
        book.Note(by, "made token", id);
        return TokenView.Of(token, secret);
    }

    /// <summary>A name for a token that no other has.</summary>
    public static string NewTokenId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(5));

    /// <summary>Gives a token a new secret; the one before is no good from now on.</summary>
    /// <returns>Null when the token is revoked.</returns>
    public TokenView? RenewToken(string by, ApiToken token)
    {
        string secret = TokenText.New();
        if (!book.Renew(token.Id, TokenText.HashOf(secret))) return null;
        book.Note(by, "renewed token", token.Id);
        return TokenView.Of(token, secret);
    }

    /// <summary>Ends a token.</summary>
    public string? Revoke(string by, string id)
    {
        if (!book.Revoke(id)) return $"There is no good token {id}.";
        book.Note(by, "revoked token", id);
        return null;
    }

    /// <summary>All accounts.</summary>
    public ImmutableArray<AccountView> Accounts() =>
        [.. book.Accounts().Select(account => AccountView.Of(account, clock.GetUtcNow()))];

    private string? Change(
        string by, string did, string name, Func<Account, Account> change, string? password = null)
    {
        if (!signIn.Change(name, change, password)) return $"There is no account {name}, or it was changed just now.";
        book.Note(by, did, name);
        return null;
    }

    private bool IsLastAdministrator(string name)
    {
        var others = book.Accounts().Where(a => a.IsOpen && a.Roles.HasFlag(AccountRoles.Administrator)).ToList();
        return others is [{ } only] && only.Name == name;
    }

    private static string LastOne(string name) => $"{name} is the last administrator: make another one first.";

    private static string NoRole(string? unknown) =>
        $"{unknown ?? "Nothing"} is not a role: choose of {RoleNames.All<AccountRoles>()}.";
}
