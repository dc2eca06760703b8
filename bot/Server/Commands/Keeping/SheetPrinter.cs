using System.Diagnostics;
using System.Net;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands.Keeping;

/// <summary>Prints a claim's page to PDF with a chromium that is on this machine.</summary>
internal sealed class SheetPrinter(Streams streams)
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "chromium.exe"];

    public async Task<int> PrintAsync(
        string caseId, string file, LiveContent live, ICaseStore store, DeskBooks books, CancellationToken cancel)
    {
        var heads = await books.Claims.ListAsync(ofCase: caseId, limit: 1, cancel: cancel);
        if (heads.IsEmpty) return streams.Refuse($"case {caseId} has no claim: begin one on its page first");
        if (Find() is not { } chromium)
            return streams.Refuse(
                $"no chromium was found on this machine: open the page /claim/{heads[0].Id} in any browser and print it from there");
        await using var app =
            ChatServer.Build(new ServerSettings(IPAddress.Loopback, 0, []), store, () => live.Current, books: books);
        await app.StartAsync(cancel);
        bool printed =
            await RunAsync(chromium, $"{app.Urls.First()}/claim/{heads[0].Id}", Path.GetFullPath(file), cancel);
        if (printed) streams.Out.WriteLine($"Wrote {file}");
        else streams.Error.WriteLine($"chromium wrote no {file}: open the page in a browser and print it from there");
        return printed ? ExitCode.Done : ExitCode.Problems;
    }

    private static string? Find() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(folder => Names.Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists);

    // Virtual time lets the page fetch its sheet before it is printed. No sandbox: chromium refuses to run as root with
    // one, and the page is the program's own.
    private static async Task<bool> RunAsync(string chromium, string address, string file, CancellationToken cancel)
    {
        File.Delete(file);
        using var run = Process.Start(new ProcessStartInfo(chromium,
            ["--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer", "--virtual-time-budget=10000",
                $"--print-to-pdf={file}", address])
            { RedirectStandardError = true, RedirectStandardOutput = true })!;
        await Task.WhenAll(run.StandardError.ReadToEndAsync(cancel), run.StandardOutput.ReadToEndAsync(cancel));
        await run.WaitForExitAsync(cancel);
        return run.ExitCode == 0 && File.Exists(file);
    }
}
