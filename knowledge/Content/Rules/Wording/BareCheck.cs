using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>A step or question that says to check a thing, and not what is seen or measured there.</summary>
/// <example>Bad: <c>Check the board.</c>, <c>Is the board good?</c>. Good: <c>Measure between 12V and GND on the
/// board.</c>, <c>Is the lamp on the board lit?</c>.</example>
internal sealed partial class BareCheck : IContentRule
{
    public string Name => "bare-check";

    public string Meaning => "A step or question that says to check a thing, and not what is seen or measured there.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## How
        1. Find the plug, upper right on the board.
        2. ⟦Press it home. Check the board.⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## How
        1. Find the plug, upper right on the board.
        2. Press it home. Look for burnt or bent pins on the board.
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("checks/fan-plug.md", """
            ## Ask
            ⟦Is the indoor board good?⟧
            """),
            new RuleExample("checks/fan-plug.md", """
            ## Ask
            Is the lamp on the indoor board lit?
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        from spoken in SpokenText.On(page)
        where spoken.IsQuestion
            ? Judgement().IsMatch(spoken.Text.Text)
            : spoken.Sentences.Any(sentence => Order().IsMatch(sentence.TrimEnd('.', '!', ';')))
        select new Diagnostic(Name, Severity.Warning, page.Source.At(spoken.Text.Span),
            "this does not say what is seen or measured",
            "say where to look or to put the leads, and what shows that it is right");

    // A verb and the thing, and nothing behind it: "check that", "check for" and figures say more.
    [GeneratedRegex(@"^(check|inspect|examine|test|verify)( (the|a|an|all|its|both|each|every))?( (?!that|for|if|whether|how|with|at|between|against|on|in|from|by|to)[\p{L}-]+){1,4}$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Order();

    // A judgement in place of what is seen.
    [GeneratedRegex(@"^(is|are) .*\b(ok|okay|good|bad|fine|faulty|defective|all right|alright|healthy|in order)\?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Judgement();
}
