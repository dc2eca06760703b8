using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Drafting;

/// <summary>Begins the page of a fault.</summary>
internal sealed class FaultDraft(ContentFolder folder) : PageDraft(folder)
{
    public override ImmutableArray<DraftQuestion> Questions =>
    [
        NewId(PageKind.Fault, "fault"),
        Free("title", "Title, as a technician would say it"),
        Free("what", "What it is, in one sentence"),
        new("frequency", "How often it is met", "occasional", [.. Pages.Frequencies.Keys]),
        Free("part", "The part that failed; nothing when the site is to blame", ""),
        new("symptom", "The symptom it shows most", "", Ids(PageKind.Symptom)),
        new("shows", "How often it shows that symptom", "usually", [.. Pages.Likelihoods.Keys])
        {
            IsAsked = answers => answers["symptom"].Length > 0,
        },
        new("repair", "The repair that cures it; nothing for a new one", "", Ids(PageKind.Repair)),
    ];

    public override DraftedPage Write(IReadOnlyDictionary<string, string> answers)
    {
        string id = answers["id"], title = answers["title"], part = answers["part"];
        string repair = answers["repair"].Length > 0 ? answers["repair"] : $"mend-{id}";
        string text =
            $"""
            ---
            kind: fault
            id: {id}
            frequency: {answers["frequency"]}
            {(part.Length > 0 ? $"part: {part}" : "site: true")}
            ---
            # {title}
            {answers["what"]}

            ## Said as
            - {title.ToLowerInvariant()}

            ## Seen
            {ToDo("say what is seen and heard.")}

            ## Measured
            {ToDo("say what readings show.")}

            ## Proof
            {ToDo("say what proves it, with a link to the check that does.")}

            ## Repair
            - {Link("repairs", repair, TitleOf(PageKind.Repair, repair))}

            ## Beware
            - {ToDo("name the cautions and when to call a licensed person.")}

            ## Warranty
            {(part.Length > 0 ? ToDo("say what the warranty desk wants to see.") : "Not a part failure. " + ToDo("say why."))}

            """;
        return new DraftedPage($"faults/{id}.md", text, [.. Additions(answers, repair)]);
    }

    private static IEnumerable<(string Place, string Line)> Additions(IReadOnlyDictionary<string, string> answers,
        string repair)
    {
        string link = Link("faults", answers["id"], answers["title"]);
        if (answers["symptom"].Length > 0)
            yield return ($"symptoms/{answers["symptom"]}.md, under ## Causes", $"| {link} | {answers["shows"]} |");
        if (answers["repair"].Length == 0) yield return ($"repairs/{repair}.md", "begin it with content new repair");
        yield return ("each check that shows something else when it is present, under ## Likelihoods",
            $"| {link} | … |");
    }
}
