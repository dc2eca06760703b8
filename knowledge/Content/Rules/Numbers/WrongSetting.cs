using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A setting or a rule over the plan that nobody knows, or a value that it cannot have.</summary>
/// <example>Bad: <c>| fault found | 95 | probability | … |</c>. Good: <c>| fault found | 0.95 | probability | …
/// |</c>.</example>
internal sealed class WrongSetting : IContentRule
{
    // A day: what takes longer is no step of a walk.
    private const double MostMinutes = 1440;

    public string Name => "wrong-setting";

    public string Meaning => "A setting or a rule over the plan that nobody knows, or a value that it cannot have.";

    public RuleExample Bad { get; } = new("words.md", """
        ## Settings
        | Setting | Value | Unit | Means | Source |
        |---|---|---|---|---|
        | fault found | ⟦95⟧ | probability | From here a fault counts as found. | [Common practice](sources.md#common-practice) |
        """);

    public RuleExample Good { get; } = new("words.md", """
        ## Settings
        | Setting | Value | Unit | Means | Source |
        |---|---|---|---|---|
        | fault found | 0.95 | probability | From here a fault counts as found. | [Common practice](sources.md#common-practice) |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Words)
        .SelectMany(page => Rows(page, SettingsTable.Heading).SelectMany(row => CheckSetting(page, row))
            .Concat(Rows(page, SettingsTable.RulesHeading).SelectMany(row => CheckRule(page, row))));

    private IEnumerable<Diagnostic> CheckSetting(Page page, (PipeTable Table, TableRow Row) row)
    {
        if (Cell(row, SettingsTable.Setting) is not { IsEmpty: false } name) yield break;
        if (SettingShapes.All.FirstOrDefault(each => each.Name == name.Text) is not { } shape)
            yield return page.Error(Name, name.Span, $"`{name.Text}` is not a setting",
                NearestWord.HintOrList(name.Text, SettingShapes.All.Select(each => each.Name)));
        else if (Cell(row, SettingsTable.Value) is { IsEmpty: false } value
            && !(Number.Read(value.Text) is { } number && shape.Fits(number)))
            yield return page.Error(Name, value.Span,
                FormattableString.Invariant($"`{value.Text}` is not a {shape.Unit}, {shape.Least} to {shape.Most}"));
        else if (Cell(row, "Unit") is { IsEmpty: false } unit && unit.Text != shape.Unit)
            yield return page.Error(Name, unit.Span, $"`{unit.Text}` is not the unit of this setting",
                $"write `{shape.Unit}`");
    }

    private IEnumerable<Diagnostic> CheckRule(Page page, (PipeTable Table, TableRow Row) row)
    {
        if (Cell(row, SettingsTable.Rule) is not { IsEmpty: false } name) yield break;
        if (!RuleShapes.Names.Contains(name.Text))
            yield return page.Error(Name, name.Span, $"`{name.Text}` is not a rule over the plan",
                NearestWord.HintOrList(name.Text, RuleShapes.Names));
        if (Cell(row, SettingsTable.Minutes) is not { IsEmpty: false } minutes || minutes.Text == SettingsTable.Any)
            yield break;
        if (Number.Read(minutes.Text) is not (>= 0 and <= MostMinutes))
            yield return page.Error(Name, minutes.Span,
                $"`{minutes.Text}` is not a number of minutes, 0 to 1440, or `any`");
        if (Cell(row, SettingsTable.Share) is { IsEmpty: false } share
            && Number.Read(share.Text) is not (>= 0 and <= 1))
            yield return page.Error(Name, share.Span, $"`{share.Text}` is not a share, 0 to 1");
    }

    private static IEnumerable<(PipeTable Table, TableRow Row)> Rows(Page page, string heading) =>
        page.Section(heading)?.Table is { } table ? table.Rows.Select(row => (table, row)) : [];

    private static RichText? Cell((PipeTable Table, TableRow Row) row, string head) =>
        row.Row.Cell(row.Table.Column(head));
}
