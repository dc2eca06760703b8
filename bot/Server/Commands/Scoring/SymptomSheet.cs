using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>The figures of a set of complaints and its failures, as text.</summary>
internal sealed record SymptomSheet(ImmutableArray<(int Number, SymptomLine Line)> Lines) : IScoreSheet
{
    public bool HasWrong => Lines.Any(line => !line.Line.IsFirst);

    public string Text(bool figuresOnly)
    {
        var text = new StringBuilder();
        ImmutableArray<SymptomLine> certain = [.. Lines.Select(line => line.Line).Where(line => line.IsCertain)];
        Add(text,
            $"{Lines.Length} complaints: first {Share(line => line.IsFirst)}, among three {Share(line => line.IsAmongThree)}");
        Add(text, $"taken without asking back {certain.Length}, right {certain.Count(line => line.IsFirst)}");
        if (figuresOnly) return text.ToString();
        foreach (var (number, line) in Lines.Where(line => !line.Line.IsFirst))
            Add(text, $"line {number}: {line.Said} | expected {line.Expected} | {Answered(line)}");
        return text.ToString();
    }

    private string Share(Func<SymptomLine, bool> holds) => Lines.IsEmpty ? "none"
        : ((double)Lines.Count(line => holds(line.Line)) / Lines.Length).ToString("0.0 %",
            CultureInfo.InvariantCulture);

    private static string Answered(SymptomLine line) =>
        line.Answer.Symptoms.IsEmpty ? "nothing" : string.Join(", ", line.Answer.Symptoms.Take(3)
            .Select(found => string.Create(CultureInfo.InvariantCulture, $"{found.Id} {found.Score:0.00}")));

    private static void Add(StringBuilder text, FormattableString line) =>
        text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
