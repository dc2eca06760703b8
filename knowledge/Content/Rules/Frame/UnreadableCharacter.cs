using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A control character, or bytes that are no UTF-8 text.</summary>
/// <example>Bad: <c>Is the U+0007 plug home?</c>. Good: <c>Is the plug home?</c>.</example>
internal sealed class UnreadableCharacter : IContentRule
{
    public string Name => "unreadable-character";

    public string Meaning => "A control character, or bytes that are no UTF-8 text.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", "## Ask\nIs the ⟦\u0007⟧plug home?\n");

    public RuleExample Good { get; } = new("checks/fan-plug.md", "## Ask\nIs the plug home?\n");

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.Written.SelectMany(Check);

    private IEnumerable<Diagnostic> Check(Page page)
    {
        int at = page.Source.FirstUnreadable;
        if (at < 0) yield break;
        (string which, string remedy) = page.Source.Text[at] switch
        {
            _ when page.Source.IsNoText =>
                ("the page is not saved as UTF-8 text, but as UTF-16 or as no text at all", "save it as UTF-8"),
            '\uFFFD' => ("here stand bytes that are no UTF-8 text, or the sign for a character that was lost before",
                "save the page as UTF-8 and write the character anew; only the first place is shown"),
            char sign =>
                ($"the control character U+{(int)sign:X4} stands in the page",
                    "take it out; only the first place is shown"),
        };
        yield return page.Error(Name, new TextSpan(at, 1), which, remedy);
    }
}
