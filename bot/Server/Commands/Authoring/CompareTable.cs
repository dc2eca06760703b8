using System.Globalization;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Writes compared problems as Markdown tables.</summary>
internal static class CompareTable
{
    public static void Write(IReadOnlyList<ComparedProblem> problems, TextWriter output)
    {
        output.Write("Expected minutes over the least possible: mean / worst of each type.\n");
        output.Write(
            "Rated is the plan alone: these problems have no pages. What the rules cost that conversations lay over "
                + "it, `content stats` says.\n\n");
        output.Write($"| type | problems | {string.Join(" | ", ComparedProblem.Ways)} |\n");
        output.Write($"|---|---{string.Concat(Enumerable.Repeat("|---", ComparedProblem.Ways.Length))}|\n");
        foreach (var type in ByType(problems))
        {
            var cells = Enumerable.Range(0, ComparedProblem.Ways.Length).Select(way => MeanAndWorst(type, way));
            output.Write($"| {type.Key} | {type.Count()} | {string.Join(" | ", cells)} |\n");
        }

        WriteWorst(problems, output);
        WritePublished(problems, output);
    }

    private static IEnumerable<IGrouping<string, ComparedProblem>> ByType(IEnumerable<ComparedProblem> problems) =>
        problems.GroupBy(problem => problem.Type);

    private static string MeanAndWorst(IEnumerable<ComparedProblem> problems, int way)
    {
        double[] ratios = [.. problems.Select(problem => problem.Ratio(way)).OfType<double>()];
        return ratios.Length == 0
            ? "–"
            : string.Create(CultureInfo.InvariantCulture, $"{ratios.Average():0.0000} / {ratios.Max():0.000}");
    }

    private static void WriteWorst(IEnumerable<ComparedProblem> problems, TextWriter output)
    {
        const int live = 1;
        output.Write(
            "\nThe problem of each type on which the live planner loses most.\n\n| type | problem | live "
                + "|\n|---|---|---|\n");
        foreach (var type in ByType(problems))
        {
            ComparedProblem worst = type.MaxBy(problem => problem.Ratio(live))!;
            output.Write(string.Create(CultureInfo.InvariantCulture,
                $"| {type.Key} | {worst.Id} | {worst.Ratio(live):0.00000} |\n"));
        }
    }

    private static void WritePublished(IEnumerable<ComparedProblem> problems, TextWriter output)
    {
        output.Write(
            "\nValues in print or in closed form.\n\n| problem | published | exact here | source |\n|---|---|---|---|\n");
        foreach (ComparedProblem problem in problems.Where(problem => problem.Published is not null))
            output.Write(string.Create(CultureInfo.InvariantCulture,
                $"| {problem.Id} | {problem.Published} | {problem.Minutes[0]:0.#########} | {problem.Source?.Replace('|', '/') ?? "–"} |\n"));
    }
}
