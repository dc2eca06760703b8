using System.Text;
using DxAssistant.Knowledge.Languages;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// Ids for pages from names of any kind: small letters, digits and hyphens, no two names the same id.
/// </summary>
internal sealed class PageIds
{
    private readonly Dictionary<string, string> ids = new(StringComparer.Ordinal);
    private readonly HashSet<string> taken = new(StringComparer.Ordinal);

    public string Of(string name)
    {
        if (ids.TryGetValue(name, out string? known)) return known;
        string plain = Plain(name), id = plain;
        for (int number = 2; !taken.Add(id); number++) id = $"{plain}-{number}";
        return ids[name] = id;
    }

    private static string Plain(string name)
    {
        StringBuilder id = new();
        foreach (char c in name.Select(PlainLetters.Of))
            if (char.IsAsciiLetterOrDigit(c)) id.Append(c);
            else if (id.Length > 0 && id[^1] != '-') id.Append('-');
        string plain = id.ToString().TrimEnd('-');
        return plain.Length == 0 ? "unnamed" : plain;
    }
}
