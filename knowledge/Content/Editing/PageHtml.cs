using System.Globalization;
using System.Net;
using System.Text;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>A page as HTML, for its author to look at.</summary>
public static class PageHtml
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables().UseYamlFrontMatter().DisableHtml().Build();

    /// <summary>
    /// The page, its front matter as a list of names and values; each block, table row, list item and line of the
    /// front matter carries its line, from 1, as <c>data-line</c>. HTML in the page is shown, not obeyed, and a link
    /// leads to pages and web addresses only.
    /// </summary>
    public static string Of(string text)
    {
        try
        {
            MarkdownDocument page = Markdown.Parse(text, Pipeline);
            foreach (Block block in page.Descendants<Block>())
                if (block.Parent is MarkdownDocument || block is TableRow or ListItemBlock) Number(block);
            foreach (LinkInline link in page.Descendants<LinkInline>())
                if (!IsPlain(link.Url)) link.Url = "";
            foreach (AutolinkInline link in page.Descendants<AutolinkInline>().ToArray())
                if (!link.IsEmail && !IsPlain(link.Url)) link.ReplaceBy(new LiteralInline(link.Url));
            return FrontMatter(text) + page.ToHtml(Pipeline);
        }
        catch (ArgumentException)
        {
            // Markdig refuses nesting beyond its limit with this exception.
            return "<p>The page is nested too deeply to be shown.</p>";
        }
    }

    private static void Number(Block block) =>
        block.GetAttributes().AddProperty("data-line", (block.Line + 1).ToString(CultureInfo.InvariantCulture));

    // What runs a program when it is followed is no link.
    private static bool IsPlain(string? url)
    {
        string head = (url ?? "").Split('/', '?', '#')[0];
        return !head.Contains(':') || head.Equals("http:", StringComparison.OrdinalIgnoreCase)
            || head.Equals("https:", StringComparison.OrdinalIgnoreCase);
    }

    private static string FrontMatter(string text)
    {
        string[] lines = text.Split('\n');
        int end = lines[0].TrimEnd() == "---" ? Array.FindIndex(lines, 1, line => line.TrimEnd() == "---") : -1;
        if (end < 0) return "";
        var list = new StringBuilder("<dl class=\"boxes\">");
        for (int at = 1; at < end; at++)
        {
            string[] parts = lines[at].Split(':', 2);
            if (lines[at].Trim().Length == 0) continue;
            list.Append(CultureInfo.InvariantCulture,
                $"<div class=\"box\" data-line=\"{at + 1}\"><dt>{WebUtility.HtmlEncode(parts.Length == 2 ? parts[0].Trim() : "")}</dt>")
                .Append($"<dd>{WebUtility.HtmlEncode(parts[^1].Trim())}</dd></div>");
        }

        return list.Append("</dl>\n").ToString();
    }
}
