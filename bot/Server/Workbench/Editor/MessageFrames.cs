using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Workbench.Editor;

/// <summary>Messages of an editor, each behind a head with its length.</summary>
/// <remarks>Language Server Protocol 3.17, base protocol: head lines in ASCII, an empty line, UTF-8 JSON.</remarks>
internal sealed class MessageFrames(Stream input, Stream output)
{
    // No page is near as long; a head that asks for more is not of an editor.
    private const int LongestMessage = 64 * 1024 * 1024;

    private const string LengthHead = "Content-Length:";

    /// <summary>The next message; null at the end.</summary>
    /// <exception cref="InvalidDataException">A head has no length, or the text is not JSON.</exception>
    public JsonObject? Read()
    {
        int length = -1;
        while (ReadLine() is { } line)
        {
            if (line.StartsWith(LengthHead, StringComparison.OrdinalIgnoreCase)
                && int.TryParse(line[LengthHead.Length..], NumberStyles.AllowLeadingWhite, CultureInfo.InvariantCulture,
                    out int number))
                length = number;
            if (line.Length > 0) continue;
            if (length is < 0 or > LongestMessage) throw new InvalidDataException("a message has no length");
            return Parse(length);
        }

        return null;
    }

    public void Write(JsonObject message)
    {
        byte[] text = Encoding.UTF8.GetBytes(message.ToJsonString(JsonLines.Plain));
        output.Write(
            Encoding.ASCII.GetBytes(
                string.Create(CultureInfo.InvariantCulture, $"{LengthHead} {text.Length}\r\n\r\n")));
        output.Write(text);
        output.Flush();
    }

    private JsonObject Parse(int length)
    {
        byte[] text = new byte[length];
        input.ReadExactly(text);
        try
        {
            return JsonNode.Parse(text) as JsonObject ?? throw new InvalidDataException("a message is no object");
        }
        catch (JsonException error)
        {
            throw new InvalidDataException(error.Message, error);
        }
    }

    private string? ReadLine()
    {
        var line = new StringBuilder();
        for (int next = input.ReadByte(); next >= 0; next = input.ReadByte())
        {
            if (next == '\n') return line.ToString().TrimEnd('\r');
            line.Append((char)next);
            if (line.Length > 1_000) throw new InvalidDataException("a head is too long");
        }

        return null;
    }
}
