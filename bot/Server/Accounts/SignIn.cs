using DxAssistant.Cases.Accounts;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.Options;

namespace DxAssistant.Server.Accounts;

/// <summary>Passwords: made, changed, tried.</summary>
/// <remarks>
/// The hasher is the framework's own (PBKDF2-HMAC-SHA512). A name without account, one of the company's and a locked
/// one are worked on like a wrong password, hash and writing alike, and are told the same: nobody learns which names
/// exist.
/// </remarks>
internal sealed class SignIn(AccountBook book, TimeProvider clock)
{
    /// <summary>The shortest password, in characters.</summary>
    /// <remarks>Source, from memory: NIST SP 800-63B-4, 3.1.1.2 (15 where a password is all that is asked).</remarks>
    public const int Shortest = 15;

    private const int Longest = 256;
    private const int MostFailures = 5;
    private static readonly TimeSpan LockedFor = TimeSpan.FromMinutes(5);

    // Source, from memory: OWASP Password Storage Cheat Sheet, PBKDF2 with HMAC-SHA512.
    private const int Rounds = 210_000;
    private static readonly PasswordHasher<Account> Hasher =
        new(Options.Create(new PasswordHasherOptions { IterationCount = Rounds }));
    private static readonly Account Nobody = new("nobody", AccountRoles.None, null, "");
    private static readonly string NobodysHash = Hasher.HashPassword(Nobody, Guid.NewGuid().ToString());

    /// <summary>Why a text cannot be a password; null when it can.</summary>
    public static string? Problem(string password) => password.Length switch
    {
        < Shortest => $"A password has at least {Shortest} characters: a few words that you remember.",
        > Longest => $"A password has at most {Longest} characters.",
        _ => null,
    };

    /// <summary>A new account.</summary>
    /// <param name="name">As <see cref="AccountName.Read"/> gives it.</param>
    /// <param name="password">Null for a person who signs in at the company only.</param>
    public static Account Make(string name, AccountRoles roles, string? password)
    {
        var account = new Account(name, roles, null, NewStamp());
        return password is null ? account : account with { PasswordHash = Hasher.HashPassword(account, password) };
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

    /// <summary>
    /// The account of this name and password; null when they are not right, or the account is closed or locked.
    /// </summary>
    public Account? Try(string? typedName, string? password)
    {
        string name = AccountName.Read(typedName) ?? "?";
        var account = book.Find(name);
        var tried =
            Hasher.VerifyHashedPassword(account ?? Nobody, account?.PasswordHash ?? NobodysHash, Cut(password ?? ""));
        if (tried != PasswordVerificationResult.Failed && MaySignIn(account)) return LetIn(account!, tried, password!);
        book.CountFailure(name, MostFailures, clock.GetUtcNow() + LockedFor);
        return null;
    }

    private bool MaySignIn(Account? account) => account is { PasswordHash: not null, IsOpen: true }
        && account.Roles != AccountRoles.None && !(account.LockedUntil > clock.GetUtcNow());

    // A hash of fewer rounds is made anew while the password is at hand.
    private Account LetIn(Account account, PasswordVerificationResult tried, string password)
    {
        if (account.FailedTries > 0) book.ClearFailures(account.Name);
        if (tried == PasswordVerificationResult.SuccessRehashNeeded)
            book.Replace(account
                with { PasswordHash = Hasher.HashPassword(account, password), FailedTries = 0, LockedUntil = null },
                account.Stamp);
        return account;
    }

    // What is longer than any password is wrong anyway, and hashing it would cost.
    private static string Cut(string password) => password.Length > Longest ? "" : password;

    /// <summary>A stamp that no account had before.</summary>
    public static string NewStamp() => Guid.NewGuid().ToString("N");
}
