using System.Text.Json;
using DxAssistant.Server.Commands;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>One run of the program, in this process.</summary>
internal sealed record Run(int Code, string Output, string Error)
{
    public string[] Lines => Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public JsonElement[] Json => [.. Lines.Select(line => JsonDocument.Parse(line).RootElement.Clone())];

    public static async Task<Run> OfAsync(string input, params string[] arguments)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var reader = new StringReader(input);
        int code = await CommandLine.RunAsync(arguments, new Streams(reader, output, error));
        return new Run(code, output.ToString(), error.ToString());
    }
}
