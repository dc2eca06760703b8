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
        int step = 0;
        foreach (var segment in reply.Segments)
        {
            step = segment.Kind == SegmentKind.Instruction ? step + 1 : 0;
            lines.Add(Mark(segment, step));
        }

        if (reply.Question is { } question) lines.AddRange(question.Fields.Select(FieldLine));
        return lines.ToImmutable();
    }

    private static string Mark(Segment segment, int step) => segment.Kind switch
    {
        SegmentKind.Caution => $"! CAUTION: {segment.Text}",
        SegmentKind.Refusal => $"! {segment.Text}",
        SegmentKind.Instruction => string.Create(CultureInfo.InvariantCulture, $"{step}. {segment.Text}"),
        SegmentKind.Verdict => $"= {segment.Text}",
        _ => segment.Text,
    };

    private static string FieldLine(Field field) =>
        $"- {field.Label} in {field.Unit}: {(field.Given is { } given ? $"given, {given}" : field.Where)}";
}
