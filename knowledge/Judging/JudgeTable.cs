using System.Text;

namespace DxAssistant.Knowledge.Judging;

/// <summary>The list of all judges as a Markdown table, for the developers' pages.</summary>
public static class JudgeTable
{
    /// <summary>The table; the same bytes on every system, lines end in a line feed.</summary>
    public static string Text()
    {
        var text = new StringBuilder("| judge | readings, in order | inputs | verdicts |\n|---|---|---|---|\n");
        foreach (var judge in JudgeCatalogue.All.Values)
            text.Append("| ").AppendJoin(" | ", Cells(judge)).Append(" |\n");
        return text.ToString();
    }

    private static IEnumerable<string> Cells(IJudge judge) =>
    [
        $"`{judge.Name}`", string.Join(", ", judge.Readings.Select(reading => reading.Name)),
        string.Join("; ", judge.Inputs.Select(
            need => $"`{need.Name}`{(need.Required ? "" : " (optional)")}: {need.Meaning}")),
        string.Join(", ", judge.Verdicts.Select(Words)),
    ];

    private static string Words(VerdictKind verdict) => string.Concat(verdict.ToString().Select(
        (letter, i) => (char.IsUpper(letter) && i > 0 ? " " : "") + char.ToLowerInvariant(letter)));
}
