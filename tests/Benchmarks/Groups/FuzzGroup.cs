using System.Collections.Immutable;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Bot.Tests.Fuzzing;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Changed inputs fed to every part that takes what comes from outside, many more than a test feeds.</summary>
/// <remarks>
/// <c>DX_INPUTS</c> says how many a part, <c>DX_FUZZ</c> how many seconds a part at most, <c>DX_PARTS</c> names some of
/// the parts, <c>DX_SEED</c> what is drawn from. It ends with the input at the first that does what it should not.
/// </remarks>
internal sealed class FuzzGroup : IBenchmarkGroup
{
    private const int Usual = 20_000;

    public string Name => "fuzz";

    public void Run(ResultFolder results)
    {
        string begun = Machine.Conditions();
        string[] parts = Environment.GetEnvironmentVariable("DX_PARTS")?.Split(',') ?? [.. FuzzParts.All.Keys];
        foreach (string name in parts) results.KeepPiece(Piece(name), Row(FeedAsync(name).GetAwaiter().GetResult()));
        results.Keep("fuzz.md",
            Page([.. FuzzParts.All.Keys.Select(name => results.Piece(Piece(name))).OfType<string>()],
                $"{begun} At the end: {Machine.Load()}."));
    }

    private static string Piece(string name) => $"fuzz-{name}.txt";

    private static async Task<FuzzFigures> FeedAsync(string name)
    {
        await using var part = FuzzParts.All[name]();
        var figures = await new FuzzRun(part, FuzzSize.Given(Usual)).RunAsync();
        Console.WriteLine(figures);
        return figures;
    }

    private static string Row(FuzzFigures it) => FormattableString.Invariant(
        $"| {it.Name} | {it.Inputs} | 0 | {it.Behaviours} | {it.Longest} | {it.Slowest:0} | {it.Took.TotalSeconds:0} | {it.Seed} |");

    private static string Page(ImmutableArray<string> rows, string conditions) => $"""
        # Inputs from outside

        Texts that people said, pages, activities and bodies, changed at random: cut, doubled, joined, swapped, with what programs stumble over
        put in. What behaves as nothing before it did is changed further; behaviours are told apart by the kind of answer, not by the lines of
        the program that ran. A run ends with the input at the first exception, answer 500, reading without a value, tag that no page may hold, or
        answer that takes two minutes: that a row is here says that there was none. Slowest: one input on a machine that did other things too.

        | what | inputs | faults | behaviours | longest, characters | slowest, ms | s | seed |
        |---|---:|---:|---:|---:|---:|---:|---:|
        {string.Join('\n', rows)}

        `DX_INPUTS=100000 dotnet run -c Release --project tests/Benchmarks -- fuzz` writes this page; `DX_PARTS=readings,codes` before it feeds
        some and leaves the rows of the others from their last run. {conditions}

        """;
}
