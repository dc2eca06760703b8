namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Brings what two people changed on one page together, line by line.</summary>
internal static class ThreeTexts
{
    /// <returns>
    /// Null when both changed the same lines, or lines beside each other, unless they changed them alike.
    /// </returns>
    public static string? Merge(string before, string mine, string theirs)
    {
        string[] lines = PageLines.Of(before);
        List<Change> changes = [.. Changes(before, mine).Concat(Changes(before, theirs)).Distinct()
            .OrderBy(each => each.Start).ThenBy(each => each.End)];
        for (int at = 1; at < changes.Count; at++)
            if (changes[at].Start <= changes[at - 1].End) return null;
        var merged = new System.Text.StringBuilder();
        int from = 0;
        foreach (Change change in changes)
        {
            merged.AppendJoin("", lines[from..change.Start]).Append(change.Text);
            from = change.End;
        }

        return merged.AppendJoin("", lines[from..]).ToString();
    }

    private static List<Change> Changes(string before, string after)
    {
        var changes = new List<Change>();
        int line = 0;
        Change? open = null;
        foreach (ChangedLine each in LineDiff.Of(before, after))
        {
            if (each.Mark == LineMark.Kept)
            {
                if (open is not null) changes.Add(open);
                open = null;
                line++;
                continue;
            }

            open ??= new Change(line, line, "");
            open = each.Mark == LineMark.In ? open with { Text = open.Text + each.Text } : open with { End = ++line };
        }

        if (open is not null) changes.Add(open);
        return changes;
    }

    /// <param name="Start">The first line that goes, from 0.</param>
    /// <param name="End">The line after the last that goes.</param>
    /// <param name="Text">What comes instead.</param>
    private sealed record Change(int Start, int End, string Text);
}
