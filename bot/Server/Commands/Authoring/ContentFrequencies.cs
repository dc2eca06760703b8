using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using System.Text;
using DxAssistant.Cases;
using DxAssistant.Cases.Figures;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Commands.Settings;
using DxAssistant.Server.Desk;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content frequencies</c>: what closed cases say of the frequency words. It changes no page.</summary>
internal sealed class ContentFrequencies(Streams streams)
{
    private readonly Argument<string?> folder = ContentCommand.Folder();
    private readonly Option<string?> data = CommonOptions.Data("cases.db in your own program folder");
    private readonly Option<string?> database = StoreOption.Make();
    private readonly Option<bool> csv = new("--csv")
    {
        Description = "All faults as a table (CSV) instead of the changes alone.",
    };
    private readonly Option<double> weight = new("--weight")
    {
        Description = $"How many cases the words on the pages count as. Default: {FrequencyReport.UsualWeight}.",
        HelpName = "N",
        DefaultValueFactory = _ => FrequencyReport.UsualWeight,
    };

    public Command Make()
    {
        var command = new Command("frequencies",
            "Propose new frequency words for faults from closed cases, for an author to accept by hand.") { folder,
                data, database, weight, csv };
        command.SetAction(RunAsync);
        return command;
    }

    private async Task<int> RunAsync(ParseResult call, CancellationToken cancel)
    {
        int code = OpenedPages.Open(call.GetValue(folder), streams, out Library? library);
        if (library is null) return code;
        var place = CasePlace.Of(call.GetValue(database), call.GetValue(data));
        if (place.Missing is { } missing) return streams.Refuse(missing);
        if (!(call.GetValue(weight) > 0)) return streams.Refuse("--weight is a number of cases above 0");
        try
        {
            var seen = await SeenAsync(place, cancel);
            var report = FrequencyReport.Of(library, seen, call.GetValue(weight));
            if (call.GetValue(csv)) WriteTable(report);
            else WriteChanges(report, call.GetValue(weight));
            return ExitCode.Done;
        }
        catch (CaseFileException error)
        {
            streams.Error.WriteLine(error.Message);
            return ExitCode.Problems;
        }
    }

    private static async Task<Dictionary<string, int>> SeenAsync(CasePlace place, CancellationToken cancel)
    {
        await using var store = await place.OpenAsync(TimeProvider.System, cancel);
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var line in await store.ListAsync(int.MaxValue, cancel))
            foreach (string fault in ProvenFaults.Of(await store.ReadAsync(line.Id, cancel)))
                seen[fault] = seen.GetValueOrDefault(fault) + 1;
        return seen;
    }

    private void WriteChanges(ImmutableArray<FrequencyProposal> report, double counted)
    {
        streams.Out.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{report.Sum(line => line.Seen)} proven faults in closed cases; the words on the pages count as {counted} cases."));
        foreach (var line in report.Where(line => line.IsChange))
            streams.Out.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"faults/{line.Fault}.md: {line.Word} → {line.Proposed} (seen {line.Seen}, its word foretells {line.Expected:0.#})"));
        if (!report.Any(line => line.IsChange)) streams.Out.WriteLine("No word has to change.");
    }

    private void WriteTable(ImmutableArray<FrequencyProposal> report)
    {
        var text = new StringBuilder();
        ClaimCsv.Line(text, ["fault", "word", "seen", "foretold", "share", "proposed"]);
        foreach (var line in report)
            ClaimCsv.Line(text,
                [line.Fault, line.Word, Text(line.Seen), Text(line.Expected), Text(line.Share), line.Proposed]);
        streams.Out.Write(text);
    }

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);
}
