using System.Diagnostics;
using System.Globalization;
using Xunit.Abstractions;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// How long a page that is loaded anew without signal takes at a quarter of the processor, beside a plain page in the
/// same run. Told, not asserted: it depends on what else the machine does. <c>DX_UPDATE=1</c> keeps the table.
/// </summary>
[Collection(KeptPhone.Name)]
public sealed class ReloadTests(KeptPhone phone, ITestOutputHelper output)
{
    private const string Plain = "data:text/html,<!doctype html><title>plain</title><p>A line";
    private const int Rounds = 3;

    private readonly Visit visit = phone.Visit;

    [ChromiumFact]
    public async Task Reload_WithoutSignalOnASlowPhone_IsUsableAndAnswers()
    {
        await phone.BeginAsync();
        var aside = await visit.Context.NewPageAsync();
        await using var slow = await Slowness.OfAsync(visit.Page, 4);
        var slowAside = await Slowness.OfAsync(aside, 4);
        await visit.Context.SetOfflineAsync(true);
        var (plain, usable, answered) = (new List<double>(), new List<double>(), new List<double>());
        for (int round = 1; round <= Rounds; round++)
        {
            plain.Add(await TimeAsync(() => aside.GotoAsync(Plain)));
            usable.Add(await TimeAsync(async () =>
            {
                await visit.Page.ReloadAsync();
                await visit.Page.WaitForSelectorAsync("body[data-ready=yes] .slip [data-command=why]");
            }));
            answered.Add(await TimeAsync(() => visit.AnswerAsync(() => visit.Page.ClickAsync("[data-command=why]"))));
            string signal = await visit.Page.InnerTextAsync("#signal");
            Assert.True(signal.Contains(round == 1 ? "1 answer waits" : $"{round} answers wait",
                StringComparison.Ordinal), $"round {round}: {signal}");
        }

        await slowAside.DisposeAsync();
        await aside.CloseAsync();
        await TellAsync(Middle(plain), Middle(usable), Middle(answered));
        await phone.HomeAsync();
    }

    private async Task TellAsync(double plain, double usable, double answered)
    {
        string line = string.Create(CultureInfo.InvariantCulture,
            $"without signal at a quarter of the processor: plain page {plain:0.00} s, sheet usable {usable:0.00} s ({usable / plain:0.0} times), first answer {answered:0.00} s more");
        output.WriteLine(line);
        if (!Look.Updates) return;
        await File.WriteAllTextAsync(Path.Combine(PageTools.Folder, "..", "Benchmarks", "results", "reload.md"),
            string.Create(CultureInfo.InvariantCulture, $"""
            # A sheet loaded anew without signal

            Middle of {Rounds} rounds in headless Chromium as a phone, at a quarter of the processor, one after the other in one run.
            The first answer starts the engine. Written by `DX_UPDATE=1 dotnet test tests/Browser.Tests --filter Reload_WithoutSignal`.

            | what | seconds | times a plain page |
            |---|---|---|
            | plain page, one line | {plain:0.00} | 1 |
            | sheet usable | {usable:0.00} | {usable / plain:0.0} |
            | first answer after that | {answered:0.00} | {answered / plain:0.0} |

            """));
    }

    private static async Task<double> TimeAsync(Func<Task> work)
    {
        var watch = Stopwatch.StartNew();
        await work();
        return watch.Elapsed.TotalSeconds;
    }

    private static double Middle(List<double> times) => times.Order().ElementAt(times.Count / 2);
}
