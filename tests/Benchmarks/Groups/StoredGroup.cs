using System.Globalization;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Benchmarks.Load;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>What cases cost that lie in the file and that nobody opens.</summary>
/// <remarks><c>DX_STORED</c> says how many, <c>DX_PAIRS</c> how often the program is started on them.</remarks>
internal sealed class StoredGroup : IBenchmarkGroup
{
    public string Name => "stored";

    public void Run(ResultFolder results)
    {
        int cases = Given("DX_STORED", 1_000_000), pairs = Given("DX_PAIRS", 2);
        string begun = Machine.Conditions();
        string rows = StoredCases.MeasureAsync(cases, pairs).GetAwaiter().GetResult();
        results.Keep("stored.md", FormattableString.Invariant($"""
            # Stored cases at rest

            The program is started on a file of {cases} cases, as each is after its first message, and on an empty one, in turn; medians of {pairs}
            starts, one before them not counted. Then one case is opened, one turn taken, and the list of cases asked for.

            {rows}

            `DX_STORED={cases} DX_PAIRS={pairs} dotnet run -c Release --project tests/Benchmarks -- stored` writes this page. {begun} At the end: {Machine.Load()}.

            """));
    }

    private static int Given(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture,
            out int value) ? value : usual;
}
