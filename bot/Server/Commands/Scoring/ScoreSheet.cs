using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>The marks of a whole file, and what they come to.</summary>
internal sealed record ScoreSheet(ImmutableArray<(int Line, Marked Marked)> Lines) : IScoreSheet
{
    public bool HasWrong => Of(Mark.Wrong) > 0;

    public int Of(Mark mark) => Lines.Count(line => line.Marked.Mark == mark);

    /// <summary>The figures first, then every line that was not right, as <c>line N</c>.</summary>
    public string Text() => Text(figuresOnly: false);

    public string Text(bool figuresOnly)
    {
        var text = new StringBuilder();
        int right = Of(Mark.Right), asked = Of(Mark.AskedBack);
        text.Append(CultureInfo.InvariantCulture,
            $"{Lines.Length} lines: {right} right, {asked} asked back, {Of(Mark.Wrong)} confidently wrong\n");
        text.Append(CultureInfo.InvariantCulture,
            $"right {Share(right)}, right or asked back {Share(right + asked)}\n");
        if (figuresOnly) return text.ToString();
        foreach (var (number, line) in Lines.Where(line => line.Marked.Mark != Mark.Right)
            .OrderByDescending(line => line.Marked.Mark).ThenBy(line => line.Line))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"{Word(line.Mark)} line {number}: {line.Said} | expected {line.Expected} | answered {line.Answered}\n");
        }

        return text.ToString();
    }

    private string Share(int count) => Lines.IsEmpty ? "none"
        : (100.0 * count / Lines.Length).ToString("0.0 \\%", CultureInfo.InvariantCulture);

    private static string Word(Mark mark) => mark == Mark.Wrong ? "wrong" : "asked back";
}
