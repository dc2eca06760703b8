using System.Globalization;
using System.Text;

namespace DxAssistant.Knowledge.Content;

/// <summary>Writes changed lines in the unified form of <c>diff</c> (POSIX.1-2017, <c>diff -U</c>).</summary>
public static class LineChanges
{
    /// <summary>The changes of all pages whose lines are as many as before; no lines around them.</summary>
    /// <param name="before">The folder as it is.</param>
    /// <param name="after">The same paths, with some lines changed.</param>
    /// <param name="root">Put before each path, for example <c>content/</c>.</param>
    public static string Write(ContentFolder before, ContentFolder after, string root = "")
    {
        var text = new StringBuilder();
        foreach (ContentFile file in after.Files)
        {
            if (before.File(file.Path) is { } old && old.Text != file.Text)
                Write(text, root + file.Path, old.Text.Split('\n'), file.Text.Split('\n'));
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, string path, string[] before, string[] after)
    {
        text.Append($"--- {path}\n+++ {path}\n");
        for (int i = 0; i < after.Length; i++)
        {
            if (before[i] == after[i]) continue;
            text.Append(CultureInfo.InvariantCulture, $"@@ -{i + 1} +{i + 1} @@\n-{before[i]}\n+{after[i]}\n");
        }
    }
}
