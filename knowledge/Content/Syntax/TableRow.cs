using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>One row of a pipe table.</summary>
/// <param name="Cells">As many as were written.</param>
/// <param name="Span">The row from its first cell to its last.</param>
internal sealed record TableRow(ImmutableArray<RichText> Cells, TextSpan Span)
{
    /// <summary>The cell of a column, or null when the row is too short or there is no such column.</summary>
    public RichText? Cell(int column) => column >= 0 && column < Cells.Length ? Cells[column] : null;
}
