using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A pipe table.</summary>
internal sealed record PipeTable(TableRow Head, ImmutableArray<TableRow> Rows, TextSpan Span)
{
    /// <summary>Number of the column with this head, or −1.</summary>
    public int Column(string head)
    {
        for (int i = 0; i < Head.Cells.Length; i++)
        {
            if (Head.Cells[i].Text == head)
            {
                return i;
            }
        }

        return -1;
    }
}
