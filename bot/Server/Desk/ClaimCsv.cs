using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Cases.Claims;

namespace DxAssistant.Server.Desk;

/// <summary>Claims as a table (RFC 4180), a line a claim.</summary>
internal static class ClaimCsv
{
    private static readonly string[] Heads =
    [
        "claim", "case", "state", "changed", "by", "series", "model", "serial", "site", "installed", "failed", "fault",
        "part", "repair", "belief", "evidence", "missing", "part covered", "labour covered", "labour minutes",
        "override",
        "line",
    ];

    public static string Of(ImmutableArray<ClaimExport> claims)
    {
        var text = new StringBuilder();
        Line(text, Heads);
        foreach (var claim in claims) Line(text, Cells(claim));
        return text.ToString();
    }

    /// <summary>One line, each cell quoted where it has to be.</summary>
    public static void Line(StringBuilder text, IEnumerable<string?> cells) =>
        text.AppendJoin(',', cells.Select(cell => Quoted(Tame(cell ?? "")))).Append("\r\n");

    private static string?[] Cells(ClaimExport claim)
    {
        var sheet = claim.Sheet;
        return
        [
            claim.Id, claim.Case, claim.State.ToString().ToLowerInvariant(),
            claim.Log[^1].At.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture), claim.Log[^1].By,
            sheet?.SeriesTitle, claim.Unit.Model, claim.Unit.Serial, claim.Unit.Site, Day(claim.Unit.Installed),
            Day(sheet?.Failed), Fault(sheet), sheet?.Part, sheet?.RepairTitle,
            sheet?.Belief.ToString("0.####", CultureInfo.InvariantCulture),
            sheet is null ? null : string.Join("; ", sheet.Evidence.Select(shown => $"{shown.Title}: {shown.Answer}")),
            sheet is null ? null : string.Join("; ", sheet.Missing), sheet?.Coverage.Part, sheet?.Coverage.Labour,
            sheet?.Coverage.LabourMinutes.ToString(CultureInfo.InvariantCulture), claim.Override, claim.Line,
        ];
    }

    private static string? Fault(ClaimSheet? sheet) => sheet?.LeftPossible is { } left
        ? $"none proven; left possible: {string.Join("; ", left.Select(fault => fault.Title))}" : sheet?.FaultTitle;

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // A spreadsheet would run such a cell as a formula, whoever typed it.
    private static string Tame(string cell) => cell.Length > 0 && "=+-@\t\r".Contains(cell[0]) ? "'" + cell : cell;

    private static string Quoted(string cell) => cell.AsSpan().ContainsAny(",\"\r\n")
        ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
