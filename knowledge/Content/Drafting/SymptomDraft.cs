using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Drafting;

/// <summary>Begins the page of a symptom.</summary>
internal sealed class SymptomDraft(ContentFolder folder) : PageDraft(folder)
{
    public override ImmutableArray<DraftQuestion> Questions =>
    [
        NewId(PageKind.Symptom, "symptom"),
        Free("title", "Title, as people would say it"),
        Free("what", "What is seen, in one sentence"),
        Free("said", "What people call it, commas between", ""),
        new("faults", "Faults that show it, commas between", "", Ids(PageKind.Fault)) { TakesSeveral = true },
    ];

    public override DraftedPage Write(IReadOnlyDictionary<string, string> answers)
    {
        string id = answers["id"], title = answers["title"];
        string[] said = Split(answers["said"].Length > 0 ? answers["said"] : title.ToLowerInvariant());
        IEnumerable<string> faults = Split(answers["faults"]).Where(fault => fault != "none-of-these");
        string text =
            $"""
            ---
            kind: symptom
            id: {id}
            ---
            # {title}
            {answers["what"]}

            ## Said as
            {string.Join('\n', said.Select(words => $"- {words}"))}

            ## Causes
            | Fault | How often |
            |---|---|
            {string.Concat(faults.Select(fault => $"| {Link("faults", fault, TitleOf(PageKind.Fault, fault))} | usually |\n"))}| {Link("faults", "none-of-these", TitleOf(PageKind.Fault, "none-of-these"))} | seldom |

            """;
        return new DraftedPage($"symptoms/{id}.md", text, [("index.md", $"- [{title}](symptoms/{id}.md)")]);
    }

    private static string[]
        Split(string text) => text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
