using System.Buffers;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A control character, or bytes that are no UTF-8 text.</summary>
/// <example>Bad: <c>Is the U+0007 plug home?</c>. Good: <c>Is the plug home?</c>.</example>
internal sealed class UnreadableCharacter : IContentRule
{
    // All controls but tab and line feed, and the sign that a decoder puts for bytes it could not read.
    private static readonly SearchValues<char> Unreadable = SearchValues.Create(
        [.. Enumerable.Range(0, 0xA0).Select(code => (char)code)
            .Where(c => char.IsControl(c) && c is not ('\t' or '\n')), '\uFFFD']);

    public string Name => "unreadable-character";

    public string Meaning => "A control character, or bytes that are no UTF-8 text.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", "## Ask\nIs the ⟦\u0007⟧plug home?\n");

    public RuleExample Good { get; } = new("checks/fan-plug.md", "## Ask\nIs the plug home?\n");

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All.SelectMany(Check);

    private IEnumerable<Diagnostic> Check(Page page)
    {
        int at = page.Source.Text.AsSpan().IndexOfAny(Unreadable);
        if (at < 0)
        {
            yield break;
        }

        string which = page.Source.Text[at] == '\uFFFD'
            ? "the page is not UTF-8 text"
            : $"the control character U+{(int)page.Source.Text[at]:X4} stands in the page";
        yield return page.Error(Name, new TextSpan(at, 1), which,
            "save the page as UTF-8 text; only the first place is shown");
    }
}
