using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>A small folder without fault, and the same folder with one page changed.</summary>
internal static class TinyContent
{
    private static readonly Dictionary<string,
        string> Pages = RepositoryFolder.Files("tests/Knowledge.Tests/Content/Tiny")
        .ToDictionary(file => file.Path.Replace('\\', '/'), file => file.Text);

    public static IReadOnlyDictionary<string, string> Texts => Pages;

    public static ContentFolder Folder => ContentFolder.Of(Pages.Select(page => new ContentFile(page.Key, page.Value)));

    public static ContentFolder With(string path, string text) => ContentFolder.Of(Pages
        .Where(page => page.Key != path).Select(page => new ContentFile(page.Key, page.Value))
        .Append(new ContentFile(path, text)));

    /// <summary>The folder with the example put in, and where its mark is.</summary>
    public static (ContentFolder Folder, SourceSpan? Mark) With(RuleExample example)
    {
        if (example.Marked.Length == 0)
        {
            return (ContentFolder.Of(Pages.Where(page => page.Key != example.Path)
                .Select(page => new ContentFile(page.Key, page.Value))), null);
        }

        string marked = Pages.TryGetValue(example.Path, out string? page) ? Merged(page, example.Marked)
            : example.Marked;
        string plain = new RuleExample(example.Path, marked).Text;
        return (With(example.Path, plain), MarkIn(example.Path, marked));
    }

    private static SourceSpan? MarkIn(string path, string marked)
    {
        int start = marked.IndexOf('⟦', StringComparison.Ordinal);
        if (start < 0)
        {
            return null;
        }

        string before = marked[..start];
        int line = before.Count(c => c == '\n') + 1;
        int column = start - (before.LastIndexOf('\n') + 1) + 1;
        return new SourceSpan(path, line, column, marked.IndexOf('⟧', StringComparison.Ordinal) - start - 1);
    }

    // A front matter alone, a title or sections take the place of those of the page; anything else is the whole page.
    private static string Merged(string page, string piece)
    {
        bool isFront = piece.StartsWith("---\n", StringComparison.Ordinal) && piece.TrimEnd('⟧', '\n')
            .EndsWith("\n---", StringComparison.Ordinal);
        isFront |= piece.EndsWith("⟦---⟧", StringComparison.Ordinal);
        if (isFront)
        {
            return piece + "\n" + page[(page.IndexOf("\n---\n", StringComparison.Ordinal) + 5)..];
        }

        if (!piece.StartsWith('#'))
        {
            return piece;
        }

        List<(string Heading, string Text)> parts = Chunks(page);
        foreach (var chunk in Chunks(piece).GroupBy(chunk => chunk.Heading))
        {
            string text = string.Concat(chunk.Select(part => part.Text));
            int at = parts.FindIndex(part => part.Heading == chunk.Key);
            if (at >= 0)
            {
                parts[at] = (chunk.Key, text);
            }
            else
            {
                parts.Add((chunk.Key, text));
            }
        }

        return string.Concat(parts.Select(part => part.Text));
    }

    // All titles count as one heading, so that an example may rename one.
    private static List<(string Heading, string Text)> Chunks(string text)
    {
        var chunks = new List<(string Heading, string Text)>();
        foreach (string line in text.TrimEnd('\n').Split('\n'))
        {
            bool isTitle = line.StartsWith("# ", StringComparison.Ordinal);
            if (isTitle || line.StartsWith("## ", StringComparison.Ordinal) || chunks.Count == 0)
            {
                chunks.Add((isTitle ? "#" : line.Replace("⟦", "").Replace("⟧", ""), ""));
            }

            chunks[^1] = (chunks[^1].Heading, chunks[^1].Text + line + "\n");
        }

        return chunks;
    }
}
