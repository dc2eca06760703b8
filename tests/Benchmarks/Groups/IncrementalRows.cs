using System.Globalization;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>What one size was timed at.</summary>
/// <param name="Row">Its row of the first table.</param>
/// <param name="Slowest">Its row of the second.</param>
internal sealed record IncrementalRows(int Pages, string Conditions, string Row, string Slowest)
{
    public static IncrementalRows Of(string kept)
    {
        string[] lines = kept.Split('\n');
        return new IncrementalRows(int.Parse(lines[0], CultureInfo.InvariantCulture), lines[1], lines[2], lines[3]);
    }

    /// <summary>A line for each, as <see cref="Of"/> reads them.</summary>
    public override string ToString() =>
        string.Join('\n', Pages.ToString(CultureInfo.InvariantCulture), Conditions, Row, Slowest);
}
