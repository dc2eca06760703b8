using System.Collections.Immutable;
using System.Text;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using SourceSpanOfMarkdig = Markdig.Syntax.SourceSpan;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>Reads running text: its words without markup, and its links.</summary>
internal static class InlineReader
{
    public static RichText Read(SourceText source, ContainerInline? inlines, TextSpan span)
    {
        var words = new StringBuilder();
        var links = ImmutableArray.CreateBuilder<PageLink>();
        var pictures = ImmutableArray.CreateBuilder<PageLink>();
        if (inlines is not null)
        {
            Append(inlines, words, links);
            pictures.AddRange(inlines.Descendants<LinkInline>().Where(link => link.IsImage).Select(LinkOf));
        }

        return new RichText(Tidy(words.ToString()), source.Trim(span), links.DrainToImmutable())
        {
            Pictures = pictures.DrainToImmutable(),
        };
    }

    /// <summary>A link or a picture as the rules see it.</summary>
    public static PageLink LinkOf(LinkInline link)
    {
        var words = new StringBuilder();
        Append(link, words, ImmutableArray.CreateBuilder<PageLink>());
        return new PageLink(
            Tidy(words.ToString()),
            link.Url ?? "",
            SpanOf(link.Span),
            SpanOf(link.UrlSpan.IsEmpty ? link.Span : link.UrlSpan))
        {
            Title = link.Title ?? "",
            TitleSpan = TitleOf(link),
        };
    }

    // Without its quotes.
    private static TextSpan TitleOf(LinkInline link) => link.TitleSpan.IsEmpty
        ? SpanOf(link.Span)
        : new TextSpan(link.TitleSpan.Start + 1, Math.Max(0, link.TitleSpan.Length - 2));

    /// <summary>The span of a Markdig node; empty at the start of the page when Markdig does not know it.</summary>
    public static TextSpan SpanOf(MarkdownObject node) => SpanOf(node.Span);

    public static TextSpan SpanOf(SourceSpanOfMarkdig span) =>
        span.IsEmpty ? default : new TextSpan(span.Start, span.Length);

    private static void Append(ContainerInline inlines, StringBuilder words, ImmutableArray<PageLink>.Builder links)
    {
        foreach (Inline inline in inlines)
        {
            switch (inline)
            {
                case LiteralInline literal:
                    words.Append(literal.Content.AsSpan());
                    break;
                case CodeInline code:
                    words.Append(code.Content);
                    break;
                case HtmlEntityInline entity:
                    words.Append(entity.Transcoded.AsSpan());
                    break;
                case AutolinkInline address:
                    words.Append(address.Url);
                    break;
                case LineBreakInline:
                    words.Append(' ');
                    break;
                case LinkInline { IsImage: true }:
                    break;
                case LinkInline link:
                    AppendLink(link, words, links);
                    break;
                case ContainerInline nested:
                    Append(nested, words, links);
                    break;
            }
        }
    }

    private static void AppendLink(LinkInline link, StringBuilder words, ImmutableArray<PageLink>.Builder links)
    {
        Append(link, words, links);
        links.Add(LinkOf(link));
    }

    private static string Tidy(string words) =>
        string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
