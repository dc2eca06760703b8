using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Benchmarks.Fitting;

/// <summary>One gate fitted anew: its weights, and how many lines of each set it takes wrongly.</summary>
/// <param name="gate">The gate as it stands in the code.</param>
/// <param name="threshold">The probability from which on it holds a message back.</param>
internal sealed class GateFit(string name, Gate gate, double threshold, ImmutableArray<FitLine> lines)
{
    /// <summary>Each line is judged by weights fitted on the other folds.</summary>
    private const int Folds = 10;

    public string Text()
    {
        var fitted = RidgeFit.Of(lines);
        var apart = Apart();
        var text = new StringBuilder().Append(CultureInfo.InvariantCulture, $"## {name}\n\n");
        text.Append("| sign | weight now | fitted |\n|---|---:|---:|\n");
        foreach (var ((sign, weight), fit) in gate.Weights.Zip(fitted))
            text.Append(CultureInfo.InvariantCulture, $"| {sign} | {weight:0.##} | {fit:0.00} |\n");
        text.Append(CultureInfo.InvariantCulture,
            $"\nMissed and wrongly held back at {threshold}: by the weights now, and by weights fitted without the line.\n\n");
        text.Append(
            "| set | to hold back | missed now | missed | to let pass | held now | held "
                + "|\n|---|---:|---:|---:|---:|---:|---:|\n");
        foreach (var set in lines.Select((line, at) => (Line: line, At: at)).GroupBy(line => line.Line.Set))
            text.Append(Row(set.Key, [.. set], apart));
        return text.Append('\n').AppendJoin("", Wrong(apart)).Append('\n').ToString();
    }

    /// <summary>What the weights that were fitted without a line would do with it, where that is wrong.</summary>
    private IEnumerable<string> Wrong(double[] apart) => lines.Select((line, at) => (Line: line, Judged: apart[at]))
        .Where(line => line.Line.Holds != line.Judged >= threshold)
        .Select(line => string.Create(CultureInfo.InvariantCulture,
            $"- {line.Line.Set}, {line.Judged:0.00}: {line.Line.Text}\n"));

    private string Row(string set, ImmutableArray<(FitLine Line, int At)> all, double[] apart)
    {
        ImmutableArray<(FitLine Line, int At)> held = [.. all.Where(line => line.Line.Holds)];
        ImmutableArray<(FitLine Line, int At)> passed = [.. all.Where(line => !line.Line.Holds)];
        return string.Create(CultureInfo.InvariantCulture,
            $"| {set} | {held.Length} | {held.Count(Passes)} | {held.Count(line => apart[line.At] < threshold)} | {passed.Length} | {passed.Count(line => !Passes(line))} | {passed.Count(line => apart[line.At] >= threshold)} |\n");
    }

    private bool Passes((FitLine Line, int At) line) => gate.Of(line.Line.Signs) < threshold;

    private double[] Apart()
    {
        var judged = new double[lines.Length];
        for (var fold = 0; fold < Folds; fold++)
        {
            var weights = RidgeFit.Of([.. lines.Where((_, at) => at % Folds != fold)]);
            for (var at = fold; at < lines.Length; at += Folds)
                judged[at] = RidgeFit.Judge(weights, lines[at].Signs);
        }
        return judged;
    }
}
