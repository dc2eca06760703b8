using System.Collections.Immutable;
using System.Text;
using DxAssistant.Benchmarks.Live;

namespace DxAssistant.Benchmarks.Growing;

/// <summary>What libraries of growing size cost, as a Markdown table.</summary>
internal static class LibraryTable
{
    public static string Text(ImmutableArray<LibraryPoint> points, string begun)
    {
        var text = new StringBuilder($"""
            # What a library costs as it grows

            Made-up pages: a symptom has words of its own, ten faults behind it, a repair for each, and six checks that tell them apart; what
            grows is the number of symptoms. *Edit* is the incremental compile after a change of one page. *Ready* is making the search and all
            else that a conversation needs. *Words* is a turn in which a complaint is typed, *tap* one in which an answer is tapped, with a
            plan where one is needed: medians of conversations on symptoms from all over the library, none of which was had before. Memory is the
            managed heap after a full collection; the texts of the pages themselves are not in it.

            ![Times the smallest against faults](growth.svg)

            | faults | pages | compile, ms | µs a page | edit, ms | library, MB | ready, ms | ready, MB | words, ms | tap, ms | 99 % of taps, ms |
            |---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|

            """);
        foreach (var it in points)
            text.Append(
                FormattableString.Invariant(
                    $"| {it.Faults} | {it.Pages} | {it.Compile:0} | {1000 * it.Compile / it.Pages:0} | {it.Edit:0.0} | {it.Memory:0.0} | {it.Index:0} | {it.IndexMemory:0.0} | {it.Words:0.00} | {it.Tap:0.00} | {it.SlowestTap:0.0} |\n"));
        text.Append(
            "\nTimes the first row:\n\n| faults | compile | edit | library | ready | words | tap | 99 % of taps "
                + "|\n|---:|---:|---:|---:|---:|---:|---:|---:|\n");
        var one = points[0];
        foreach (var it in points)
            text.Append(
                FormattableString.Invariant(
                    $"| {it.Faults / one.Faults}× | {it.Compile / one.Compile:0.0} | {it.Edit / one.Edit:0.0} | {it.Memory / one.Memory:0.0} | {it.Index / one.Index:0.0} | {it.Words / one.Words:0.0} | {it.Tap / one.Tap:0.0} | {it.SlowestTap / one.SlowestTap:0.0} |\n"));
        return text.Append($"""

            `dotnet run -c Release --project tests/Benchmarks -- growth` writes this page; `DX_FAULTS` names the largest size, {points[^1].Faults} here. {begun} At the end: {Machine.Load()}.

            """).ToString();
    }
}
