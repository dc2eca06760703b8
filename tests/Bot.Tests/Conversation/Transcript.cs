using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// A conversation as a Markdown page. A line <c>**You:** words</c> is a message: plain words, <c>[key]</c> for a tap,
/// <c>/back</c> for a command, <c>{U–V = 1.1; V–W = 1.1}</c> for a form. What the assistant answers stands below as a
/// quote, pictures by their words.
/// </summary>
internal static class Transcript
{
    private const string Mark = "**You:** ";

    /// <summary>The page with the answers the assistant gives now.</summary>
    public static string Play(Assistant assistant, string page)
    {
        var written = new StringBuilder();
        CaseState state = CaseState.New;
        int turns = 0;
        foreach (string line in page.Split('\n'))
        {
            if (line.StartsWith('>')) continue;
            if (!line.StartsWith(Mark, StringComparison.Ordinal))
            {
                if (line.Length > 0 || !EndsBlank(written)) written.Append(line).Append('\n');
                continue;
            }

            var message = new Message((++turns).ToString(CultureInfo.InvariantCulture), Read(line[Mark.Length..]));
            Turn turn = assistant.Take(state, message);
            state = Fold.Apply(state, turn.Events);
            written.Append(line).Append("\n\n").Append(Quote(turn.Reply)).Append('\n');
        }

        return written.ToString().TrimEnd('\n') + "\n";
    }

    private static bool EndsBlank(StringBuilder written) =>
        written.Length >= 2 && written[^1] == '\n' && written[^2] == '\n';

    private static MessageBody Read(string said) => said switch
    {
        ['[', .. var key, ']'] => new MessageBody.Choice(null, key),
        ['{', .. var form, '}'] => new MessageBody.Readings(null, [.. form.Split(';').Select(Field)]),
        ['/', .. var command] =>
            new MessageBody.Command(
                Enum.Parse<CommandWord>(command.Replace("-", "", StringComparison.Ordinal), ignoreCase: true)),
        _ => new MessageBody.Words(said),
    };

    private static FilledField Field(string part)
    {
        int equals = part.IndexOf('=', StringComparison.Ordinal);
        return new FilledField(part[..equals].Trim(), part[(equals + 1)..].Trim());
    }

    private static string Quote(Reply reply)
    {
        var quote = new StringBuilder();
        foreach (Segment segment in reply.Segments)
        {
            quote.Append(CultureInfo.InvariantCulture, $"> {Label(segment.Kind)}: {segment.Text}  \n");
            foreach (Picture picture in segment.Pictures ?? [])
                quote.Append(CultureInfo.InvariantCulture, $"> picture: {picture.Text}  \n");
        }

        if (reply.Question is { } question)
        {
            foreach (Field field in question.Fields)
                quote.Append(CultureInfo.InvariantCulture,
                    $"> ▢ {field.Label} ({field.Unit}){(field.Given is { } given ? $" = {given}" : "")}  \n");
            foreach (Option option in question.Options)
                quote.Append(CultureInfo.InvariantCulture, $"> ○ [{option.Key}] {option.Label}  \n");
        }

        return quote.ToString();
    }

    private static string Label(SegmentKind kind) => kind.ToString().ToLowerInvariant();
}
