namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A Markdown link or picture as written.</summary>
/// <param name="Text">What it shows.</param>
/// <param name="Target">What stands in the round brackets.</param>
/// <param name="Span">The whole link.</param>
/// <param name="TargetSpan">The target alone.</param>
internal sealed record PageLink(string Text, string Target, TextSpan Span, TextSpan TargetSpan)
{
    /// <summary>What stands in quotes behind the target; empty without it.</summary>
    public string Title { get; init; } = "";

    /// <summary>Where that stands.</summary>
    public TextSpan TitleSpan { get; init; }

    /// <summary>True for a link that leaves the content folder, such as <c>https://…</c>.</summary>
    public bool LeadsOutside => Target.Contains("://", StringComparison.Ordinal)
        || Target.StartsWith("mailto:", StringComparison.Ordinal);

    /// <summary>The part after <c>#</c>, or null.</summary>
    public string? Anchor => Target.IndexOf('#', StringComparison.Ordinal) is >= 0 and int at ? Target[(at + 1)..]
        : null;

    /// <summary>The path inside the content folder that the link means when it stands on
    /// <paramref name="page"/>.</summary>
    /// <returns>Null when the path climbs out of the folder.</returns>
    public string? PathFrom(string page)
    {
        string written = Target.Split('#')[0];
        if (written.Length == 0)
        {
            return page;
        }

        List<string> parts = written[0] == '/' ? [] : [.. page.Split('/')[..^1]];
        foreach (string part in written.Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (part == ".." && parts.Count == 0)
            {
                return null;
            }

            if (part == "..")
            {
                parts.RemoveAt(parts.Count - 1);
            }
            else if (part != ".")
            {
                parts.Add(part);
            }
        }

        return string.Join('/', parts);
    }

    /// <summary>How to write a link from one page to another.</summary>
    public static string Between(string from, string to)
    {
        string[] start = from.Split('/')[..^1];
        string[] end = to.Split('/');
        int same = 0;
        while (same < start.Length && same < end.Length - 1 && start[same] == end[same])
        {
            same++;
        }

        return string.Join('/', Enumerable.Repeat("..", start.Length - same).Concat(end[same..]));
    }
}
