using DxAssistant.Cases.Accounts;
using Microsoft.AspNetCore.Identity;

namespace DxAssistant.Server.Accounts;

/// <summary>Passwords: made, changed, tried.</summary>
/// <remarks>The hasher is the framework's own (PBKDF2). A name without account and a locked account take as long as a
/// wrong password and are told the same, so nobody learns which names exist.</remarks>
internal sealed class SignIn(AccountBook book, TimeProvider clock)
{
    /// <summary>The shortest password, in characters.</summary>
    /// <remarks>Source, from memory: NIST SP 800-63B-4, 3.1.1.2 (15 where a password is all that is asked).</remarks>
    public const int Shortest = 15;

    private const int Longest = 256;
    private const int MostFailures = 5;
    private static readonly TimeSpan LockedFor = TimeSpan.FromMinutes(5);
    private static readonly PasswordHasher<Account> Hasher = new();
    private static readonly Account Nobody = new("nobody", AccountRoles.None, null, "");
    private static readonly string NobodysHash = Hasher.HashPassword(Nobody, Guid.NewGuid().ToString());

    /// <summary>Why a text cannot be a password; null when it can.</summary>
    public static string? Problem(string password) => password.Length switch
    {
        < Shortest => $"A password has at least {Shortest} characters: a few words that you remember.",
        > Longest => $"A password has at most {Longest} characters.",
        _ => null,
    };

    /// <summary>A new account with a password.</summary>
    /// <param name="name">As <see cref="AccountName.Read"/> gives it.</param>
    public static Account Make(string name, AccountRoles roles, string password)
    {
        var account = new Account(name, roles, null, NewStamp());
        return account with { PasswordHash = Hasher.HashPassword(account, password) };
    }

    /// <summary>Changes the password, the roles or whether an account is open; its sessions end.</summary>
    /// <returns>False when there is no such account, or it was changed meanwhile.</returns>
    public bool Change(string name, Func<Account, Account> change, string? password = null)
    {
        if (book.Find(name) is not { } account) return false;
        var changed = change(account) with { Stamp = NewStamp(), FailedTries = 0, LockedUntil = null };
        if (password is not null) changed = changed with { PasswordHash = Hasher.HashPassword(changed, password) };
        return book.Replace(changed, account.Stamp);
    }

    /// <summary>The account of this name and password; null when they are not right, or the account is closed or locked.</summary>
    public Account? Try(string? typedName, string? password)
    {
        var account = AccountName.Read(typedName) is { } name ? book.Find(name) : null;
        var tried = Hasher.VerifyHashedPassword(
            account ?? Nobody, account?.PasswordHash ?? NobodysHash, Cut(password ?? ""));
        if (account is null || account.LockedUntil > clock.GetUtcNow()) return null;
        if (tried == PasswordVerificationResult.Failed || account.PasswordHash is null)
        {
            book.CountFailure(account.Name, MostFailures, clock.GetUtcNow() + LockedFor);
            return null;
        }

        if (!account.IsOpen || account.Roles == AccountRoles.None) return null;
        if (account.FailedTries > 0) book.ClearFailures(account.Name);
        return account;
    }

    // What is longer than any password is wrong anyway, and hashing it would cost.
    private static string Cut(string password) => password.Length > Longest ? "" : password;

    private static string NewStamp() => Guid.NewGuid().ToString("N");
}
