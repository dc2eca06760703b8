using System.Globalization;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Pages and proposals as the screens read them.</summary>
internal static class WritingJson
{
    /// <summary>A diagnostic with its place in the text as a browser counts it: UTF-16 code units from 0.</summary>
    public static JsonObject Of(Diagnostic found, string? text)
    {
        (int start, int end) = Place(text, found.At);
        return new JsonObject
        {
            ["path"] = found.At.Path, ["line"] = found.At.Line, ["start"] = start, ["end"] = end,
            ["severity"] = found.Severity == Severity.Error ? "error" : "warning",
            ["rule"] = found.Name, ["message"] = found.Message, ["help"] = found.Help,
            ["mend"] = found.Mend is { } mend && Place(text, mend.At) is var at
                ? new JsonObject
                {
                    ["path"] = mend.At.Path, ["start"] = at.Start, ["end"] = at.End, ["text"] = mend.Text,
                } : null,
        };
    }

    /// <summary>All lines that stay, go and come; long stretches that stay are left out.</summary>
    public static JsonArray Changes(string? before, string? after)
    {
        ChangedLine[] lines = [.. LineDiff.Of(before ?? "", after ?? "")];
        var all = new JsonArray();
        int old = 0, now = 0, skipped = 0;
        for (int at = 0; at < lines.Length; at++)
        {
            if (lines[at].Mark != LineMark.In) old++;
            if (lines[at].Mark != LineMark.Out) now++;
            if (lines[at].Mark == LineMark.Kept && !IsNear(lines, at))
            {
                skipped++;
                continue;
            }

            if (skipped > 0) all.Add(new JsonObject { ["mark"] = "left-out", ["lines"] = skipped });
            skipped = 0;
            string mark = lines[at].Mark switch { LineMark.Out => "out", LineMark.In => "in", _ => "kept" };
            all.Add(new JsonObject
            {
                ["mark"] = mark, ["line"] = mark == "out" ? old : now, ["text"] = lines[at].Text.TrimEnd('\n'),
            });
        }

        if (skipped > 0) all.Add(new JsonObject { ["mark"] = "left-out", ["lines"] = skipped });
        return all;
    }

    /// <summary>A proposal as a line of the list.</summary>
    public static JsonObject Of(Proposal proposal, ContentFolder folder, Person person) => new()
    {
        ["number"] = proposal.Number,
        ["by"] = proposal.By,
        ["at"] = proposal.At.UtcDateTime.ToString("o", CultureInfo.InvariantCulture),
        ["note"] = proposal.Note,
        ["errors"] = proposal.Errors,
        ["paths"] = new JsonArray([.. proposal.Pages.Select(page => (JsonNode)page.Path)]),
        ["stands"] = ProposalDesk.Stands(proposal, folder) switch
        {
            Standing.Fits =>
                "fits", Standing.Overtaken => "overtaken", Standing.InPlace => "in-place", _ => "taken-back",
        },
        ["mine"] = proposal.By == person.Name,
        ["mayTakeBack"] = proposal.TakenBackAt is null && ProposalDesk.MayTakeBack(person, proposal),
        ["takenBackAt"] = proposal.TakenBackAt?.UtcDateTime.ToString("o", CultureInfo.InvariantCulture),
        ["takenBackBy"] = proposal.TakenBackBy,
    };

    /// <summary>A proposal with what it changes, and what changed on its pages since.</summary>
    public static JsonObject Whole(Proposal proposal, ContentFolder folder, Person person)
    {
        JsonObject whole = Of(proposal, folder, person);
        whole["pages"] =
            new JsonArray([.. proposal.Pages.Select(page => (JsonNode)Of(page, folder.File(page.Path)?.Text))]);
        return whole;
    }

    private static JsonObject Of(ProposedPage page, string? now) => new()
    {
        ["path"] = page.Path,
        ["isNew"] = page.Before is null,
        ["text"] = page.After,
        ["before"] = page.Before,
        ["changes"] = Changes(page.Before, page.After),
        ["takesOut"] = page.After is null,
        ["isGone"] = now is null && page.Before is not null && page.After is not null,
        ["since"] = now is not null && now != page.Before && now != page.After ? Changes(page.Before, now) : null,
    };

    private static bool IsNear(ChangedLine[] lines, int at)
    {
        const int around = 3;
        for (int near = Math.Max(0, at - around); near <= Math.Min(lines.Length - 1, at + around); near++)
            if (lines[near].Mark != LineMark.Kept) return true;
        return false;
    }

    private static (int Start, int End) Place(string? text, SourceSpan at)
    {
        if (text is null) return (0, 0);
        int start = 0;
        for (int line = 1; line < at.Line; line++)
        {
            int end = text.IndexOf('\n', start);
            if (end < 0) return (text.Length, text.Length);
            start = end + 1;
        }

        int stop = text.IndexOf('\n', start);
        (int from, int to) = TextColumns.InCodeUnits(text[start..(stop < 0 ? text.Length : stop)], at);
        return (start + from, start + to);
    }
}
