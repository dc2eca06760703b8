using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Bot.Tests.Faults;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Two hours of conversations with one program: memory, handles and times, a dozen times.</summary>
/// <remarks><c>DX_MINUTES</c> says how long.</remarks>
internal sealed class SoakGroup : IBenchmarkGroup
{
    private const int Usual = 120;
    private const int Looks = 12;
    private const int People = 40;

    private static readonly TimeSpan Thinks = TimeSpan.FromSeconds(1);

    public string Name => "soak";

    public void Run(ResultFolder results)
    {
        int minutes = int.TryParse(Environment.GetEnvironmentVariable("DX_MINUTES"), NumberStyles.None,
            CultureInfo.InvariantCulture, out int given) ? given : Usual;
        string begun = Machine.Conditions();
        var samples = new Soak(People, Thinks, FaultSize.Seed,
            Console.WriteLine).RunAsync(TimeSpan.FromMinutes(minutes), Looks).GetAwaiter().GetResult();
        SoakSample middle = SoakSample.Mean(samples[(Looks / 3)..(2 * Looks / 3)]), last =
            SoakSample.Mean(samples[(2 * Looks / 3)..]);
        results.Keep("soak.md", FormattableString.Invariant($"""
            # A long run

            {People} people talk to one program over HTTP and think a second after each answer: recorded conversations with hidden faults, over and
            over, each as a new case, {minutes} minutes. Nothing was sent twice; afterwards the program was told to end and every turn that was answered
            was found. What is kept in mind of cases, steps and turns has a bound each and fills up at first: the last rows are the ones to hold on to.

            | after, min | turns | half within, ms | 99 % within, ms | resident, MB | handles | threads |
            |---:|---:|---:|---:|---:|---:|---:|
            {Rows(samples)}
            | last third / the one before | {(double)last.Turns / middle.Turns:0.00} | {last.Half / middle.Half:0.00} | {last.P99 / middle.P99:0.00} | {last.Resident / middle.Resident:0.00} | {(double)last.Handles / middle.Handles:0.00} | {(double)last.Threads / middle.Threads:0.00} |

            `DX_MINUTES={minutes} dotnet run -c Release --project tests/Benchmarks -- soak` writes this page. {begun} At the end: {Machine.Load()}.

            """));
    }

    private static string Rows(ImmutableArray<SoakSample> samples) =>
        string.Join('\n', samples.Select(it => FormattableString.Invariant(
            $"| {it.At.TotalMinutes:0.0} | {it.Turns} | {it.Half:0.0} | {it.P99:0.0} | {it.Resident:0} | {it.Handles} | {it.Threads} |")));
}
