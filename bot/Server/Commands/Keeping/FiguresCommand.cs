using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Figures;
using DxAssistant.Server.Commands.Settings;
using DxAssistant.Server.Desk;

namespace DxAssistant.Server.Commands.Keeping;

/// <summary><c>figures</c>: what the cases of a desk add up to, as tables and plots.</summary>
internal sealed class FiguresCommand(Streams streams)
{
    private readonly Argument<string> into = new("folder")
    {
        Description = "Where to write the tables (CSV) and plots (SVG).",
    };
    private readonly Option<string?> data = CommonOptions.Data("cases.db in your own program folder");
    private readonly Option<string?> database = StoreOption.Make();

    public Command Make()
    {
        var command = new Command("figures",
            "Write what the cases add up to: by unit and fault over time, ends, first visits, time to proof, skipped "
                + "checks, parts claimed without proof.") { into, data, database };
        command.SetAction(RunAsync);
        return command;
    }

    private async Task<int> RunAsync(ParseResult call, CancellationToken cancel)
    {
        var place = CasePlace.Of(call.GetValue(database), call.GetValue(data));
        if (place.Missing is { } missing) return streams.Refuse(missing);
        try
        {
            var cases = await ReadAsync(place, cancel);
            string folder = Directory.CreateDirectory(call.GetValue(into)!).FullName;
            foreach (var table in FigureTables.Of(cases, await ClaimsAsync(place, cancel))) Write(folder, table);
            streams.Out.WriteLine($"Wrote the figures of {Counted.Of(cases.Length, "case")} to {call.GetValue(into)}");
            return ExitCode.Done;
        }
        catch (CaseFileException error)
        {
            streams.Error.WriteLine(error.Message);
            return ExitCode.Problems;
        }
    }

    private static async Task<ImmutableArray<CaseFacts>> ReadAsync(CasePlace place, CancellationToken cancel)
    {
        await using var store = await place.OpenAsync(TimeProvider.System, cancel);
        var cases = ImmutableArray.CreateBuilder<CaseFacts>();
        foreach (var line in await store.ListAsync(int.MaxValue, cancel))
            cases.Add(CaseFacts.Of(await store.ReadAsync(line.Id, cancel)));
        return cases.ToImmutable();
    }

    private static async Task<ImmutableArray<ClaimFacts>> ClaimsAsync(CasePlace place, CancellationToken cancel)
    {
        await using var books = place.OpenBooks();
        var claims = ImmutableArray.CreateBuilder<ClaimFacts>();
        foreach (var head in await books.Claims.ListAsync(limit: int.MaxValue, cancel: cancel))
            if (ClaimFacts.Of(Claim.Of(head.Id, await books.Claims.ReadAsync(head.Id, cancel))) is { } facts)
                claims.Add(facts);
        return claims.ToImmutable();
    }

    private static void Write(string folder, FigureTable table)
    {
        var text = new StringBuilder();
        ClaimCsv.Line(text, table.Heads);
        foreach (var row in table.Rows) ClaimCsv.Line(text, row);
        File.WriteAllText(Path.Combine(folder, table.Name + ".csv"), text.ToString());
        if (FigureTables.ToDraw(table) is { } drawn)
            File.WriteAllText(Path.Combine(folder, table.Name + ".svg"),
                MonthPlot.Draw(drawn, $"Cases by {drawn.Heads[1]} and month"));
    }
}
