using System.Globalization;
using Markdig;
using Markdig.Renderers.Html;
using Markdig.Syntax;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>A page as HTML, for its author to look at.</summary>
public static class PageHtml
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables().UseYamlFrontMatter().DisableHtml().Build();

    /// <summary>The page without its front matter; each block carries its line, from 1, as <c>data-line</c>. HTML in
    /// the page is shown, not obeyed.</summary>
    public static string Of(string text)
    {
        try
        {
            MarkdownDocument page = Markdown.Parse(text, Pipeline);
            foreach (Block block in page)
                block.GetAttributes().AddProperty("data-line", (block.Line + 1).ToString(CultureInfo.InvariantCulture));
            return page.ToHtml(Pipeline);
        }
        catch (ArgumentException)
        {
            // Markdig refuses nesting beyond its limit with this exception.
            return "<p>The page is nested too deeply to be shown.</p>";
        }
    }
}
