using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Drafting;

/// <summary>Begins the page of a check, with the readings and inputs of its calculation when it has one.</summary>
internal sealed class CheckDraft(ContentFolder folder) : PageDraft(folder)
{
    public override ImmutableArray<DraftQuestion> Questions =>
    [
        NewId(PageKind.Check, "check"),
        Free("title", "Title, as a technician would say it"),
        Free("ask", "The one question it asks, with its question mark") with { IsQuestion = true },
        Free("minutes", "Minutes it takes once the unit stands ready", "5") with { IsMinutes = true },
        Access, Who,
        new("calculation", "The calculation that judges its readings; nothing when a look is enough", "",
            [.. Judges.All.Select(judge => judge.Name)]),
        Free("outcomes", "What can be seen, commas between, healthy first", "good, bad")
            with { IsAsked = answers => answers["calculation"].Length == 0 },
        new("fault", "The fault it shows", "", Ids(PageKind.Fault)),
    ];

    public override DraftedPage Write(IReadOnlyDictionary<string, string> answers)
    {
        string id = answers["id"], title = answers["title"];
        IJudge? judge = Judges.Find(answers["calculation"].Length > 0 ? answers["calculation"] : null);
        (string Id, string Answer, string Verdict)[] outcomes = judge is null
            ? Seen(answers["outcomes"])
            : Judged(judge);
        string text =
            $"""
            ---
            kind: check
            id: {id}
            minutes: {answers["minutes"]}
            access: [{answers["access"]}]
            who: {answers["who"]}
            {(judge is null ? "" : $"calculation: {judge.Name}\n")}---
            # {title}

            ## Ask
            {answers["ask"]}

            ## How
            1. {ToDo("say how it is done, one step a line.")}

            {(judge is null ? "" : Readings(judge) + "\n" + Expected(judge) + "\n")}## Outcomes
            | Outcome | Answer |{(judge is null ? "" : " Verdict |")}
            |---|---|{(judge is null ? "" : "---|")}
            {string.Join('\n', outcomes.Select(outcome => $"| {outcome.Id} | {outcome.Answer} |{(judge is null ? "" : $" {outcome.Verdict} |")}"))}

            ## Likelihoods
            | Fault | {string.Join(" | ", outcomes.Select(outcome => outcome.Id))} |
            |---|{string.Concat(outcomes.Select(_ => "---|"))}
            {Row(answers["fault"], outcomes.Length)}| every other fault | {string.Join(" | ", outcomes.Select((_, place) => place == 0 ? "always" : ""))} |

            ## Sources
            - {Source}

            """;
        return new DraftedPage($"checks/{id}.md", text, [("index.md", $"- [{title}](checks/{id}.md)")]);
    }

    private static (string Id, string Answer, string Verdict)[] Seen(string outcomes) =>
    [
        .. outcomes.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(words => (words.ToLowerInvariant()
                .Replace(' ', '-'), char.ToUpperInvariant(words[0]) + words[1..], "")),
    ];

    private static (string Id, string Answer, string Verdict)[] Judged(IJudge judge) =>
    [
        .. judge.Verdicts.Select(VerdictWords.Of)
            .Select(word => (word.Replace(' ', '-'), char.ToUpperInvariant(word[0]) + word[1..], word)),
    ];

    private string Row(string fault, int outcomes) => fault.Length == 0 ? ""
        : $"| {Link("faults", fault, TitleOf(PageKind.Fault, fault))} | seldom |{string.Concat(Enumerable.Repeat("  |", outcomes - 1))}\n";

    private static string Readings(IJudge judge) =>
        "## Readings\n| Reading | Unit | Possible | Where |\n|---|---|---|---|\n"
        + string.Concat(judge.Readings.Take(judge.Counts[^1]).Select(need =>
        {
            string unit = UnitOf(need.Kind ?? QuantityKind.Voltage);
            return $"| {need.Name} | {unit} | 0 {unit} to 100 {unit} | {ToDo("say where the leads go.")} |\n";
        }));

    private static string Expected(IJudge judge) => "## Expected\n| Input | Value | Source |\n|---|---|---|\n"
        + string.Concat(judge.Inputs.Where(input => input.Required || input.Name is "low" or "high").Select(input =>
            $"| {input.Name} | {ToDo(input.Meaning)} | {Source} |\n"));

    private static string UnitOf(QuantityKind kind) => Unit.All.First(unit => unit.Kind == kind).Symbol;
}
