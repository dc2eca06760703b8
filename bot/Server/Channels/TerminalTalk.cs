using System.Globalization;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Commands;

namespace DxAssistant.Server.Channels;

/// <summary>One case in the terminal: plain lines, numbered answers. The same lines whether a person or a file is at
/// the other end.</summary>
internal sealed class TerminalTalk(Streams streams, CaseConversation conversation)
{
    public async Task<int> RunAsync(CancellationToken cancel)
    {
        await streams.Out.WriteLineAsync(
            $"Case {conversation.CaseId}. An empty line says nothing; Ctrl+D ends the talk, the case is kept.");
        var reply = await conversation.OpenAsync(cancel);
        Show(reply);
        while (await AskAsync(cancel) is { } line)
        {
            if (line.Trim().Length == 0) continue;
            if (!TryRead(line, reply.Question, out var body, out string? problem))
            {
                await streams.Out.WriteLineAsync(problem);
                continue;
            }

            reply = await conversation.SayAsync(body, cancel);
            Show(reply);
        }

        return ExitCode.Done;
    }

    private async Task<string?> AskAsync(CancellationToken cancel)
    {
        await streams.Out.WriteAsync("> ");
        await streams.Out.FlushAsync(cancel);
        return await streams.In.ReadLineAsync(cancel);
    }

    private void Show(Reply reply)
    {
        streams.Out.WriteLine();
        foreach (string line in PlainReply.Lines(reply)) streams.Out.WriteLine(line);
        if (reply.Question is not { Options.IsEmpty: false } question) return;

        // Where a reading is asked for, a bare number is the reading; the answers then need their sign.
        string sign = question.Fields.IsEmpty ? "" : "#";
        for (int i = 0; i < question.Options.Length; i++)
        {
            streams.Out.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"  {sign}{i + 1}  {question.Options[i].Label}"));
        }
    }

    private static bool TryRead(
        string line, OpenQuestion? question, out MessageBody body, out string? problem)
    {
        if (Chosen(line.Trim(), question) is { } option)
        {
            body = new MessageBody.Choice(question!.Id, option.Key);
            problem = null;
            return true;
        }

        bool taken = SaidWords.TryRead(line, out var words, out problem, question?.Id);
        body = words!;
        return taken;
    }

    private static Option? Chosen(string line, OpenQuestion? question)
    {
        if (question is null) return null;
        bool signed = line.StartsWith('#');
        if (!signed && !question.Fields.IsEmpty) return null;
        return int.TryParse(signed ? line[1..] : line, NumberStyles.None, CultureInfo.InvariantCulture, out int place)
            ? question.Options.ElementAtOrDefault(place - 1)
            : null;
    }
}
