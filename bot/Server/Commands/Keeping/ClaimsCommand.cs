using System.CommandLine;
using System.Text.Json;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Commands.Settings;
using DxAssistant.Server.Desk;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands.Keeping;

/// <summary><c>claims</c>: check and print the sheets of claims.</summary>
internal sealed class ClaimsCommand(Streams streams)
{
    private readonly Option<string?> content = CommonOptions.Content();
    private readonly Option<string?> data = CommonOptions.Data("cases.db in your own program folder");
    private readonly Option<string?> database = StoreOption.Make();
    private readonly Argument<string> shown = new("sheet")
    {
        Description = "A claim in JSON, a text with the line of a sheet, or that line itself.",
    };
    private readonly Argument<string> caseId = new("case") { Description = "The case whose claim is printed." };
    private readonly Option<string> pdf = new("--pdf")
    {
        Description = "The file to write.", HelpName = "FILE", Required = true,
    };

    public Command Make()
    {
        var verify = new Command("verify", "Say whether a sheet belongs to logs that nobody altered.") { shown, content,
            data, database };
        verify.SetAction((call, cancel) => InAsync(call,
            (live, store, books) => VerifyAsync(call.GetValue(shown)!, live, store, books.Claims, cancel)));
        var sheet = new Command("sheet",
            "Print the sheet of a case's claim with the chromium of this machine.") { caseId, pdf, content, data,
                database };
        sheet.SetAction((call, cancel) => InAsync(call, (live, store, books) =>
            new SheetPrinter(streams).PrintAsync(call.GetValue(caseId)!, call.GetValue(pdf)!, live, store, books,
                cancel)));
        return new Command("claims", "Work on claims.") { verify, sheet };
    }

    private async Task<int> InAsync(ParseResult call, Func<LiveContent, ICaseStore, DeskBooks, Task<int>> work)
    {
        int opened = OpenedContent.Open(call.GetValue(content), streams, out var live);
        if (live is null) return opened;
        using (live)
        {
            var place = CasePlace.Of(call.GetValue(database), call.GetValue(data));
            if (place.Missing is { } missing) return streams.Refuse(missing);
            try
            {
                await using var store = await place.OpenAsync(TimeProvider.System);
                await using var books = place.OpenBooks();
                return await work(live, store, books);
            }
            catch (CaseFileException error)
            {
                streams.Error.WriteLine(error.Message);
                return ExitCode.Problems;
            }
        }
    }

    private async Task<int> VerifyAsync(string given, LiveContent live, ICaseStore store, IClaimStore claims,
        CancellationToken cancel)
    {
        string text = File.Exists(given) ? await File.ReadAllTextAsync(given, cancel) : given;
        if (VerifyLine.Find(text) is not { } line)
            return streams.Refuse(
                "no line of a sheet was found: give the whole line at its foot, from “claim” to the last digit, or a "
                    + "file that holds it");
        var desk = new ClaimDesk(store, claims, TimeProvider.System, () => live.Current.Library!);
        var wrong = ClaimIn(text) is { } claim
            ? await desk.VerifyAsync(line, claim, cancel) : await desk.VerifyAsync(line, cancel: cancel);
        foreach (string problem in wrong) streams.Out.WriteLine($"NOT GENUINE: {problem}");
        if (wrong.IsEmpty) await SayAsync(desk, line, cancel);
        return wrong.IsEmpty ? ExitCode.Done : ExitCode.Problems;
    }

    // What the logs hold, to be laid beside the paper.
    private async Task SayAsync(ClaimDesk desk, VerifyLine line, CancellationToken cancel)
    {
        streams.Out.WriteLine("genuine: the sheet belongs to logs that nobody altered. It must say:");
        if ((await desk.ShowAsync(line.Claim, cancel))?.Sheet is not { } sheet) return;
        streams.Out.WriteLine(
            $"  {sheet.SeriesTitle}, serial {sheet.Unit.Serial ?? "not written down"}: {sheet.Part}, {sheet.FaultTitle}");
        foreach (var seen in sheet.Evidence)
            streams.Out.WriteLine(
                $"  {seen.Title}: {seen.Answer}{(seen.Verdict is { } verdict ? $" ({verdict})" : "")}");
    }

    private static ClaimExport? ClaimIn(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<ClaimExport>(text, ChatJson.Options);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
