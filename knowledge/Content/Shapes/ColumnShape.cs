using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Shapes;

/// <summary>One column of a table that a kind of page has.</summary>
/// <param name="MayBeEmpty">False when each cell must say something.</param>
/// <param name="LinksTo">The kind of page that each cell links to, or null.</param>
/// <param name="MayBeLeftOut">True for a last column that a table may do without.</param>
internal sealed record ColumnShape(
    string Head, bool MayBeEmpty = false, PageKind? LinksTo = null, bool MayBeLeftOut = false);
