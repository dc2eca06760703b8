using System.Text.RegularExpressions;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Reads the HTML that a page of an author became, as a browser would find its tags.</summary>
/// <remarks>
/// Source: WHATWG HTML, 13.2.5.6 (tag open state): a tag begins at <c>&lt;</c> before a letter or <c>/</c>; in what the
/// writer makes every other <c>&lt;</c> is <c>&amp;lt;</c>.
/// </remarks>
internal static partial class PageRead
{
    private static readonly HashSet<string> Tags =
    [
        "h1", "h2", "h3", "h4", "h5", "h6", "p", "ul", "ol", "li", "table", "thead", "tbody", "tr", "th", "td", "a",
        "img", "em", "strong", "code", "pre", "blockquote",
        "hr", "br", "dl", "dt", "dd", "div",
    ];

    private static readonly HashSet<string> Attributes =
        ["href", "src", "alt", "title", "class", "data-line", "start", "type", "style", "colspan", "rowspan"];

    /// <summary>
    /// Fails when there is a tag or an attribute that the writer has no use for, or an address that runs something.
    /// </summary>
    public static void IsTame(string html)
    {
        foreach (Match tag in Tag().Matches(html))
        {
            Assert.Contains(tag.Groups["name"].Value, Tags);
            foreach (Match attribute in Attribute().Matches(tag.Groups["rest"].Value))
            {
                string name = attribute.Groups["name"].Value, value = attribute.Groups["value"].Value;
                Assert.Contains(name, Attributes);
                if (name is "href" or "src")
                    Assert.DoesNotMatch("(?i)^[\\s\\x00-\\x20]*(java|vb)script:|^data:", value);
                if (name == "style") Assert.Matches("^text-align: (left|right|center);$", value);
            }
        }

        Assert.Equal(html.Count(c => c == '<'), Tag().Count(html));
    }

    [GeneratedRegex("""</?(?<name>[a-z0-9]+)(?<rest>(\s+[a-z-]+="[^"]*")*)\s*/?>""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Tag();

    [GeneratedRegex("""\s(?<name>[a-z-]+)="(?<value>[^"]*)"?""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Attribute();
}
