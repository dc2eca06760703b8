using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>
/// A sentence too long to be read on a roof or said over the telephone: above 25 words in a step or caution, above 20
/// in a question.
/// </summary>
/// <remarks>The limits are common practice, no source.</remarks>
internal sealed class LongSentence : IContentRule
{
    private const int Question = 20;
    private const int Step = 25;

    public string Name => "long-sentence";

    public string Meaning =>
        "A sentence too long to be read on a roof or said over the telephone: above 25 words in a step or caution, "
            + "above 20 in a question.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## How
        1. ⟦Find the plug, which sits in the upper right corner of the board behind the cable clamp that you have to open first, and press it home.⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## How
        1. Open the cable clamp. The plug sits behind it, in the upper right corner of the board.
        2. Press it home.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        from spoken in SpokenText.On(page)
        let most = spoken.IsQuestion ? Question : Step
        let longest = spoken.Sentences.Select(sentence => sentence.Split(' ').Length).DefaultIfEmpty().Max()
        where longest > most
        select new Diagnostic(Name, Severity.Warning, page.Source.At(spoken.Text.Span),
            $"a sentence of {longest} words",
            $"at most {most} {(spoken.IsQuestion ? "in a question" : "in a step or caution")}: one idea in each sentence");
}
