namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Cuts a text into lines that keep their ends, so that the text is their concatenation.</summary>
internal static class PageLines
{
    public static string[] Of(string text)
    {
        var lines = new List<string>();
        for (int start = 0; start < text.Length;)
        {
            int end = text.IndexOf('\n', start);
            int next = end < 0 ? text.Length : end + 1;
            lines.Add(text[start..next]);
            start = next;
        }

        return [.. lines];
    }
}
