using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>The figures of a phrase set, its confusions and its failures, as text.</summary>
internal sealed record MatchSheet(ImmutableArray<(int Number, MatchLine Line)> Lines) : IScoreSheet
{
    private const int LeastConfusions = 2;

    private ImmutableArray<MatchLine> All => [.. Lines.Select(line => line.Line)];

    public MatchFigures Figures => new(All);

    public bool HasWrong => Lines.Any(line => !line.Line.IsRight);

    public string Text(bool figuresOnly)
    {
        var text = new StringBuilder();
        AddFigures(text, Figures);
        AddReliability(text);
        if (figuresOnly) return text.ToString();
        AddConfusions(text);
        foreach (var (number, line) in Lines.Where(line => !line.Line.IsRight))
            Add(text, $"line {number}: {line.Said} | expected {line.Expected} | {Answered(line)}");
        return text.ToString();
    }

    private static void AddFigures(StringBuilder text, MatchFigures figures)
    {
        if (figures.Faults > 0)
        {
            Add(text,
                $"{figures.Faults} phrases of faults: first {Percent(figures.First)}, among three {Percent(figures.AmongThree)}, ruled out yet first {figures.RuledOutFirst}, wrongly refused {Percent(figures.WronglyRefused)}");
            Add(text,
                $"plain search on the same pages: first {Percent(figures.PlainFirst)}, among three {Percent(figures.PlainAmongThree)}; of its errors gone {Percent(figures.ErrorsGone)}");
        }

        if (figures.Idle > 0)
            Add(text, $"{figures.Idle} phrases of no fault: given a fault {Percent(figures.FalseFaults)}");
        if (figures.Dangers > 0) Add(text, $"{figures.Dangers} unsafe requests: refused {Percent(figures.Refused)}");
    }

    private void AddReliability(StringBuilder text)
    {
        var (count, right) = Reliability.Certain(All);
        if (count == 0) return;
        Add(text, $"given as certain {count}, right {Percent((double)right / count)}");
        foreach (var band in Reliability.Table(All).Where(band => band.Count > 0))
            Add(text,
                $"  sure {band.From:0.00} to {band.To:0.00}: {band.Count}, right {Percent((double)band.Right / band.Count)}");
    }

    private void AddConfusions(StringBuilder text)
    {
        var confusions = All.Where(line => !line.IsRight).GroupBy(line => $"{line.Expected} taken for {line.First}")
            .Where(group => group.Count() >= LeastConfusions)
            .OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal);
        foreach (var group in confusions)
            Add(text, $"{group.Count()} times {group.Key}");
    }

    private static string Answered(MatchLine line) => line.Faults.IsEmpty ? line.First
        : string.Join(", ", line.Answer.Candidates.Take(3).Select(
            candidate => string.Create(CultureInfo.InvariantCulture, $"{candidate.Id} {candidate.Score:0.00}")));

    private static string Percent(double share) => share.ToString("0.0 %", CultureInfo.InvariantCulture);

    private static void Add(StringBuilder text, FormattableString line) =>
        text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
}
