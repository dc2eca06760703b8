using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>Roles and scopes as they are written.</summary>
internal static class RoleNames
{
    /// <summary>The roles one by one, in small letters.</summary>
    public static ImmutableArray<string> Of(AccountRoles roles) => Names(roles, AccountRoles.None);

    /// <summary>The scopes one by one, such as <c>read-cases</c>.</summary>
    public static ImmutableArray<string> Of(TokenScopes scopes) => Names(scopes, TokenScopes.None);

    /// <summary>Reads roles.</summary>
    /// <param name="unknown">The first that is no role; null when all are.</param>
    public static AccountRoles Roles(IEnumerable<string?> names, out string? unknown) =>
        Read<AccountRoles>(names, out unknown).Aggregate(AccountRoles.None, (all, role) => all | role);

    /// <summary>Reads scopes.</summary>
    /// <param name="unknown">The first that is no scope; null when all are.</param>
    public static TokenScopes Scopes(IEnumerable<string?> names, out string? unknown) =>
        Read<TokenScopes>(names, out unknown).Aggregate(TokenScopes.None, (all, scope) => all | scope);

    /// <summary>All that can be written, commas between.</summary>
    public static string All<T>() where T : struct, Enum =>
        string.Join(", ", Enum.GetValues<T>().Where(value => Convert.ToInt32(value) != 0)
            .Select(value => Write(value.ToString())));

    private static ImmutableArray<string> Names<T>(T all, T none) where T : struct, Enum =>
        [.. Enum.GetValues<T>().Where(one => !one.Equals(none) && all.HasFlag(one))
            .Select(one => Write(one.ToString()))];

    private static List<T> Read<T>(IEnumerable<string?> names, out string? unknown) where T : struct, Enum
    {
        var known = Enum.GetValues<T>().Where(value => Convert.ToInt32(value) != 0)
            .ToDictionary(value => Write(value.ToString()), StringComparer.OrdinalIgnoreCase);
        // What comes from outside may hold null, whatever its type says.
        var asked = names.Select(name => name?.Trim() ?? "null").Where(name => name.Length > 0).ToList();
        unknown = asked.Find(name => !known.ContainsKey(name));
        return [.. asked.Where(known.ContainsKey).Select(name => known[name])];
    }

    private static string Write(string name) => string.Concat(
        name.Select((c, at) => char.IsAsciiLetterUpper(c)
            && at > 0 ? $"-{char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}
