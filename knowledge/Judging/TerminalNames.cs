namespace DxAssistant.Knowledge.Judging;

/// <summary>The terminals that the label of a reading names.</summary>
internal static class TerminalNames
{
    /// <summary>The terminal that two labels share, as U in <c>U–V</c> and <c>U–W</c>; the first label when they name
    /// no terminals.</summary>
    public static string Common(string one, string other) =>
        Of(one).Intersect(Of(other), StringComparer.OrdinalIgnoreCase).FirstOrDefault() ?? one;

    private static string[] Of(string label) => label.Split(
        ['–', '-', ' ', '/', '—'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
