using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>Who may pass to the addresses that begin so.</summary>
/// <param name="Path">The beginning of the address, whole segments.</param>
/// <param name="Roles">A person with one of these passes; null when everybody does.</param>
/// <param name="Reads">A token with this passes where nothing is changed.</param>
/// <param name="Writes">A token with this passes everywhere.</param>
internal sealed record Door(
    string Path, AccountRoles? Roles, TokenScopes Reads = TokenScopes.None, TokenScopes Writes = TokenScopes.None)
{
    /// <summary>Whether the door stands before an address.</summary>
    public bool StandsBefore(PathString address) => Path == "/"
        ? address == "/" || address == ""
        : address.StartsWithSegments(Path, StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether a person, or the program behind a token, may pass.</summary>
    /// <param name="changes">Whether the request would change something.</param>
    public bool Opens(Person person, bool changes)
    {
        if (Roles is not { } roles) return true;
        if (person.Scopes is { } scopes)
            return (scopes & (changes ? Writes : Reads)) != 0;
        return (person.Roles & (roles | AccountRoles.Administrator)) != 0;
    }
}
