using System.Security.Claims;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>Finds the account of somebody whom their company vouches for, and says whether they are let in.</summary>
/// <remarks>
/// An account with a password is never entered by the company's word: a company can name whomever it likes, and the
/// accounts that were made here are not its own.
/// </remarks>
internal sealed class CompanyAccounts(AccountBook book, CompanySettings company)
{
    /// <param name="issuer">Who vouches.</param>
    /// <param name="told">What is said of the person, checked already.</param>
    /// <returns>Null when they are not let in; an audit line says why.</returns>
    public Account? LetIn(string issuer, ClaimsPrincipal told)
    {
        if (told.FindFirstValue("sub") is not { Length: > 0 } person) return Refuse("?", "has no subject");
        string subject = $"{issuer} {person}";
        string? name = book.Company.AccountOf(subject) ?? AccountName.Read(told.FindFirstValue(company.NameClaim));
        if (name is null) return Refuse("?", $"has no name in {company.NameClaim}");
        if (company.RolesClaim is null) return Enter(subject, book.Find(name), name);
        var roles = RolesOf(told, company.RolesClaim);
        return roles == AccountRoles.None
            ? Refuse(name, $"nothing in {company.RolesClaim} is a role here")
            : Enter(subject, WithRoles(name, roles), name);
    }

    private Account? Enter(string subject, Account? account, string name)
    {
        if (account is null) return Refuse(name, "there is no account of that name");
        if (account.PasswordHash is not null) return Refuse(name, "the account has a password");
        if (!account.IsOpen || account.Roles == AccountRoles.None) return Refuse(name, "the account is closed");
        book.Company.Bind(subject, name);
        if (book.Company.AccountOf(subject) != name)
            return Refuse(name, "the account is somebody else's at the company");
        book.Note(name, "signed in at the company");
        return account;
    }

    private AccountRoles RolesOf(ClaimsPrincipal told, string claim) =>
        told.FindAll(claim)
            .Aggregate(AccountRoles.None, (all, one) => all | company.Roles.GetValueOrDefault(one.Value));

    // The company says who may what: a new account is made so, an old one is changed, and its other sessions end.
    private Account? WithRoles(string name, AccountRoles roles)
    {
        var account = book.Find(name);
        if (account is null)
        {
            if (book.Add(SignIn.Make(name, roles, null))) book.Note("company", "added account", name);
            return book.Find(name);
        }

        if (account.PasswordHash is not null || account.Roles == roles) return account;
        if (book.Replace(account with { Roles = roles, Stamp = SignIn.NewStamp() }, account.Stamp))
            book.Note("company", "changed roles", name);
        return book.Find(name);
    }

    private Account? Refuse(string name, string why)
    {
        book.Note(name, "was not let in from the company", why);
        return null;
    }
}
