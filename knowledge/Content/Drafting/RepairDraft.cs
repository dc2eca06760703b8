using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Drafting;

/// <summary>Begins the page of a repair.</summary>
internal sealed class RepairDraft(ContentFolder folder) : PageDraft(folder)
{
    public override ImmutableArray<DraftQuestion> Questions =>
    [
        NewId(PageKind.Repair, "repair"),
        Free("title", "Title: what is done"),
        Free("minutes", "Minutes it takes", "30") with { IsMinutes = true },
        Free("verify-minutes", "Minutes to see whether it worked", "10") with { IsMinutes = true },
        Access, Who,
        Free("parts", "Parts it takes, commas between; nothing when none", ""),
        Free("verify", "One question that shows whether it worked",
            "Does the unit run for ten minutes without the complaint?") with { IsQuestion = true },
    ];

    public override DraftedPage Write(IReadOnlyDictionary<string, string> answers)
    {
        string id = answers["id"];
        string text =
            $"""
            ---
            kind: repair
            id: {id}
            minutes: {answers["minutes"]}
            verify-minutes: {answers["verify-minutes"]}
            access: [{answers["access"]}]
            who: {answers["who"]}
            parts: [{answers["parts"]}]
            ---
            # {answers["title"]}

            ## Steps
            1. {ToDo("say how it is done, one step a line.")}

            ## Verify
            {answers["verify"]}

            ## Sources
            - {Source}

            """;
        return new DraftedPage($"repairs/{id}.md", text,
            [("the fault it cures, under ## Repair", $"- {Link("repairs", id, answers["title"])}")]);
    }
}
