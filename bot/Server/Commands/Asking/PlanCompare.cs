using System.CommandLine;
using System.Text.Json;
using DxAssistant.Server.Commands.Authoring;

namespace DxAssistant.Server.Commands.Asking;

/// <summary>
/// <c>plan compare FILE</c>: how far each way of planning stays from the optimum, as a Markdown table.
/// </summary>
internal static class PlanCompare
{
    public static Command Make(Streams streams)
    {
        var file = new Argument<string>("file")
        {
            Description =
                "Problems with their optimum, as tests/Reference/sequencing.json; its fields are explained beside it.",
        };
        var compare = new Command(
            "compare",
            "Expected minutes of each way of planning over the least possible, by type of problem.") { file };
        compare.SetAction(call => Run(call.GetValue(file)!, streams));
        return compare;
    }

    private static int Run(string file, Streams streams)
    {
        if (!File.Exists(file))
            return streams.Refuse($"there is no file {file}: name one such as tests/Reference/sequencing.json");
        try
        {
            using var document = JsonDocument.Parse(File.ReadAllText(file));
            List<ComparedProblem> compared = [];
            foreach (JsonElement instance in Request.Items(document.RootElement, "instances"))
            {
                compared.Add(ComparedProblem.Of(instance));
                streams.Error.Write($"\r{compared.Count} problems");
            }

            streams.Error.WriteLine();
            if (compared.Count == 0)
                return streams.Refuse(
                    $"{file}: there is nothing in \"instances\"; put problems there as in tests/Reference/sequencing.json");
            CompareTable.Write(compared, streams.Out);
            return compared.Exists(problem => problem.MissesTheOptimum) ? ExitCode.Problems : ExitCode.Done;
        }
        catch (JsonException error)
        {
            return streams.Refuse($"{file} is no JSON: look at line {error.LineNumber + 1}");
        }
        catch (Exception error) when (error is RequestException or ArgumentException or InvalidOperationException)
        {
            return streams.Refuse($"{file}: {error.Message.Split('\n')[0]}");
        }
    }
}
