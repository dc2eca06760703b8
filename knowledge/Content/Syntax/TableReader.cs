using System.Collections.Immutable;
using Markdig.Extensions.Tables;
using Markdig.Syntax;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>Reads a pipe table.</summary>
internal static class TableReader
{
    /// <param name="stray">Gets the rows of dashes that stand where no head is above them.</param>
    public static PipeTable Read(SourceText source, Table table, List<TextSpan> stray)
    {
        TableRow[] rows = [.. table.OfType<Markdig.Extensions.Tables.TableRow>().Select(row => ReadRow(source, row))];
        stray.AddRange(rows[1..].Where(IsDashes).Select(row => row.Span));
        return new PipeTable(rows[0], [.. rows[1..].Where(row => !IsDashes(row))], InlineReader.SpanOf(table));
    }

    private static bool IsDashes(TableRow row) =>
        row.Cells.Length > 0 && row.Cells.All(cell => cell.Text.Length > 0
            && cell.Text.All(c => c is '-' or '–' or '—' or ':'));

    private static TableRow ReadRow(SourceText source, Markdig.Extensions.Tables.TableRow row)
    {
        TextSpan span = LineOf(source, InlineReader.SpanOf(row));
        ImmutableArray<TextSpan> places = PlacesOfCells(source, span);
        var cells = ImmutableArray.CreateBuilder<RichText>();
        foreach (TableCell cell in row.OfType<TableCell>().Take(places.Length))
        {
            LeafBlock? block = cell.OfType<LeafBlock>().FirstOrDefault();
            TextSpan place = places[cells.Count];
            RichText text = InlineReader.Read(source, block?.Inline, place);
            cells.Add(text.Span.Length > 0 ? text : text with { Span = place });
        }

        // Markdig pads short rows and cuts long ones; the rules must see what was written.
        while (cells.Count < places.Length)
        {
            TextSpan place = places[cells.Count];
            cells.Add(new RichText(source.Slice(source.Trim(place)), source.Trim(place), []));
        }

        return new TableRow(cells.DrainToImmutable(), source.Trim(span));
    }

    private static TextSpan LineOf(SourceText source, TextSpan row)
    {
        int start = row.Start == 0 ? 0 : source.Text.LastIndexOf('\n', row.Start - 1) + 1;
        int end = source.Text.IndexOf('\n', row.Start);
        return source.Trim(TextSpan.Between(start, end < 0 ? source.Text.Length : end));
    }

    // Cells stand between pipes, but for pipes that are escaped or inside `code`.
    private static ImmutableArray<TextSpan> PlacesOfCells(SourceText source, TextSpan line)
    {
        var places = ImmutableArray.CreateBuilder<TextSpan>();
        int start = line.Length > 0 && source.Text[line.Start] == '|' ? line.Start + 1 : line.Start;
        bool inCode = false;
        for (int i = start; i < line.End; i++)
        {
            char c = source.Text[i];
            inCode ^= c == '`';
            if (c == '\\')
            {
                i++;
            }
            else if (c == '|' && !inCode)
            {
                places.Add(TextSpan.Between(start, i));
                start = i + 1;
            }
        }

        if (start < line.End)
        {
            places.Add(TextSpan.Between(start, line.End));
        }

        return places.DrainToImmutable();
    }
}
