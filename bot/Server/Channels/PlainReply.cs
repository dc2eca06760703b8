using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Server.Channels;

/// <summary>A reply as plain lines, for channels that show nothing but text.</summary>
internal static class PlainReply
{
    public static ImmutableArray<string> Lines(Reply reply)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        bool numbered = reply.Question?.Kind != QuestionKind.Access; // such a step counts itself
        int step = 0;
        string? page = null;
        foreach (var segment in reply.Segments)
        {
            step = numbered && segment.Kind == SegmentKind.Instruction ? step + 1 : 0;
            bool goesOn = segment.Kind == SegmentKind.Caution && PageOf(segment) is { } here && here == page;
            page = segment.Kind == SegmentKind.Caution ? PageOf(segment) : null;
            lines.Add(goesOn ? $"    - {segment.Text}" : Mark(segment, step));
        }

        if (reply.Question is { } question) lines.AddRange(question.Fields.Select(FieldLine));
        return lines.ToImmutable();
    }

    private static string Mark(Segment segment, int step) => segment.Kind switch
    {
        SegmentKind.Caution => $"! CAUTION: {segment.Text}",
        SegmentKind.Refusal => $"! {segment.Text}",
        SegmentKind.Instruction when step > 0 => string.Create(CultureInfo.InvariantCulture, $"{step}. {segment.Text}"),
        SegmentKind.Verdict => $"= {segment.Text}",
        _ => segment.Text,
    };

    // The sentences of one caution page belong together.
    private static string? PageOf(Segment segment) => segment.From.OfType<Provenance.Page>().FirstOrDefault()?.Path;

    private static string FieldLine(Field field) =>
        $"- {field.Label} in {field.Unit}: {(field.Given is { } given ? $"given, {given}" : field.Where)}";
}
