using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads what the pages set for the course of a conversation.</summary>
internal static class SettingsTable
{
    public const string Heading = "Settings";
    public const string Setting = "Setting";
    public const string Value = "Value";
    public const string RulesHeading = "Rules over the plan";
    public const string Rule = "Rule";
    public const string Minutes = "Minutes";
    public const string Share = "Share";

    /// <summary>What stands where a gate of safety has no limit.</summary>
    public const string Any = "any";

    /// <summary>The settings; what cannot be read is as usual, and the first of two equal names counts.</summary>
    public static WalkSettings Read(Page words) => WalkSettings.Usual with
    {
        Values = Rows(words, Heading).Select(row => (Name: Cell(row, Setting), Value: Number.Read(Cell(row, Value))))
            .Where(row => row is { Name: not null, Value: not null }).DistinctBy(row => row.Name)
            .ToImmutableSortedDictionary(row => row.Name!, row => row.Value!.Value, StringComparer.Ordinal),
        Limits = Rows(words, RulesHeading).Select(row => (Name: Cell(row, Rule), Limit: Limit(row)))
            .Where(row => row is { Name: not null, Limit: not null }).DistinctBy(row => row.Name)
            .ToImmutableSortedDictionary(row => row.Name!, row => row.Limit!, StringComparer.Ordinal),
    };

    private static RuleLimit? Limit((PipeTable Table, TableRow Row) row) => Cell(row, Minutes) == Any
        ? RuleLimit.Any
        : Number.Read(Cell(row, Minutes)) is { } minutes && Number.Read(Cell(row, Share)) is { } share
        ? new RuleLimit(minutes, share)
        : null;

    private static IEnumerable<(PipeTable Table, TableRow Row)> Rows(Page words, string heading) =>
        words.Section(heading)?.Table is { } table ? table.Rows.Select(row => (table, row)) : [];

    private static string? Cell((PipeTable Table, TableRow Row) row, string head) =>
        row.Row.Cell(row.Table.Column(head))?.Text;
}
