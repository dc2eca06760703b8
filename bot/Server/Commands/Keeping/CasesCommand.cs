using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Cases;
using DxAssistant.Cases.Export;
using DxAssistant.Cases.Personal;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Commands.Settings;

namespace DxAssistant.Server.Commands.Keeping;

/// <summary><c>cases</c>: keep, check and hand on what was recorded.</summary>
internal sealed class CasesCommand(Streams streams)
{
    private readonly Option<string?> data = CommonOptions.Data("cases.db in your own program folder");
    private readonly Option<string?> store = StoreOption.Make();
    private static readonly string[] PartsGivenOut = ["cases", "calls", "claims"];
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public Command Make() => new("cases", "Keep, check and hand on what was recorded.")
    {
        Sub("backup", "Copy all cases to a new file, also while the program runs.", [Named("file")], Backup),
        Sub("restore", "Put a copy in the place of the file of cases.", [Named("file")], RestoreAsync),
        Sub("verify", "Say whether a case, an exported file or all cases are as they were recorded.",
            [Named("case-or-file", needed: false)], VerifyAsync),
        Sub("export", "Write one case to a JSON file.", [Named("case"), Named("file")], ExportAsync),
        Sub("import", "Take in a case from a JSON file.", [Named("file")], ImportAsync),
        Sub("blank", "Remove people's own words and all photos from a case for good.", [Named("case")], BlankAsync),
        Sub("person",
            "Write all that is kept about a person to a JSON file: cases, calls, claims, account; found by name, "
                + "telephone or serial number.",
            [Named("about"), Named("file")], PersonAsync),
    };

    private static Argument<string> Named(string name, bool needed = true) =>
        new(name) { Arity = needed ? ArgumentArity.ExactlyOne : ArgumentArity.ZeroOrOne };

    private Command Sub(
        string name, string what, Argument<string>[] arguments, Func<CasePlace, string?[], Task<int>> run)
    {
        var command = new Command(name, what) { data, store };
        foreach (var argument in arguments) command.Add(argument);
        command.SetAction((call, _) => RunAsync(call, arguments, run));
        return command;
    }

    private async Task<int> RunAsync(
        ParseResult call, Argument<string>[] arguments, Func<CasePlace, string?[], Task<int>> run)
    {
        string?[] values = [.. arguments.Select(argument => call.GetValue(argument))];
        if (values.FirstOrDefault(value => value?.StartsWith('-') == true) is { } odd)
            return streams.Refuse($"there is no option {odd}: --help lists what there is");
        try
        {
            return await run(CasePlace.Of(call.GetValue(store), call.GetValue(data)), values);
        }
        catch (Exception error) when (error is CaseFileException or IOException or UnauthorizedAccessException)
        {
            return streams.Refuse(error.Message);
        }
    }

    private Task<int> Backup(CasePlace place, string?[] values)
    {
        if (FileOf(place, "pg_dump") is not { } file) return Task.FromResult(ExitCode.WrongCall);
        CaseCopy.Make(file, values[0]!);
        return Said($"{file} is copied to {values[0]}");
    }

    private async Task<int> RestoreAsync(CasePlace place, string?[] values)
    {
        if (FileOf(place, "pg_restore") is not { } file) return ExitCode.WrongCall;
        if (CaseDocument.IsIn(values[0]!))
            return streams.Refuse($"{values[0]} is one exported case: cases import takes it in");
        CaseCopy.Make(values[0]!, file);
        return await VerifyAsync(place, new string?[1]);
    }

    private string? FileOf(CasePlace place, string tool)
    {
        if (place is CasePlace.InFile inFile) return inFile.File;
        streams.Refuse($"cases in PostgreSQL are kept and restored by its own tool {tool}");
        return null;
    }

    private async Task<int> VerifyAsync(CasePlace place, string?[] values)
    {
        if (values[0] is { } database && CaseFile.IsOne(database))
            return streams.Refuse($"{database} is a file of cases: look at it with cases verify --data {database}");
        if (values[0] is { } file && File.Exists(file))
            return VerifyFile(CaseDocument.Read(await File.ReadAllTextAsync(file)));
        if (place.Missing is { } missing) return streams.Refuse(missing);
        await using var cases = await place.OpenAsync(TimeProvider.System);
        var names = values[0] is { } name ? [name] : await cases.NamesAsync();
        int altered = 0;
        foreach (string one in names) altered += await FitsAsync(cases, one) ? 0 : 1;
        streams.Out.WriteLine(FormattableString.Invariant($"{names.Length} looked at, {altered} not as recorded"));
        return altered == 0 ? ExitCode.Done : ExitCode.Problems;
    }

    private int VerifyFile(CaseDocument document)
    {
        try
        {
            var log = document.OpenWhole();
            streams.Out.WriteLine($"case {document.Id} is as it was recorded; its last hash is {log[^1].Hash}");
            return ExitCode.Done;
        }
        catch (CaseFileException error)
        {
            streams.Out.WriteLine(error.Message);
            return ExitCode.Problems;
        }
    }

    private async Task<bool> FitsAsync(ICaseStore cases, string name)
    {
        try
        {
            if (await CaseExchange.IsSoundAsync(cases, name)) return true;
            streams.Out.WriteLine($"there is no case {name}");
        }
        catch (CaseFileException error)
        {
            streams.Out.WriteLine(error.Message);
        }

        return false;
    }

    private async Task<int> ExportAsync(CasePlace place, string?[] values)
    {
        if (place.Missing is { } missing) return streams.Refuse(missing);
        await using var cases = await place.OpenAsync(TimeProvider.System);
        if (await CaseExchange.TakeOutAsync(cases, values[0]!) is not { } document)
            return streams.Refuse($"there is no case {values[0]}");
        if (File.Exists(values[1])) return streams.Refuse($"{values[1]} is there already: name a new file");
        await File.WriteAllTextAsync(values[1]!, document.Write());
        return await Said($"case {values[0]} is in {values[1]}");
    }

    private async Task<int> ImportAsync(CasePlace place, string?[] values)
    {
        if (CaseFile.IsOne(values[0]!))
            return streams.Refuse($"{values[0]} is a file of cases: cases restore puts it in place");
        var document = CaseDocument.Read(await File.ReadAllTextAsync(values[0]!));
        document.OpenWhole(); // before a file for cases is made
        await using var cases = await place.OpenAsync(TimeProvider.System);
        return await CaseExchange.TakeInAsync(cases, document)
            ? await Said($"case {document.Id} is taken in")
            : streams.Refuse($"case {document.Id} is here already: nothing was changed");
    }

    private async Task<int> BlankAsync(CasePlace place, string?[] values)
    {
        if (place.Missing is { } missing) return streams.Refuse(missing);
        await using var cases = await place.OpenAsync(TimeProvider.System);
        await using var books = place.OpenBooks();
        var desk = new PersonalDesk(cases, books, place.OpenAccounts(TimeProvider.System), TimeProvider.System);
        if (await desk.BlankAsync(values[0]!) is not { } entries)
            return streams.Refuse($"there is no case {values[0]}");
        return await Said(FormattableString.Invariant(
            $"words were removed from {entries} entries of case {values[0]}; copies and exports still hold them"));
    }

    private async Task<int> PersonAsync(CasePlace place, string?[] values)
    {
        if (values[0]!.Trim().Length < 3)
            return streams.Refuse("say at least three characters of a name, a telephone number or a serial number");
        if (File.Exists(values[1])) return streams.Refuse($"{values[1]} is there already: name a new file");
        if (place.Missing is { } missing) return streams.Refuse(missing);
        await using var cases = await place.OpenAsync(TimeProvider.System);
        await using var books = place.OpenBooks();
        var desk = new PersonalDesk(cases, books, place.OpenAccounts(TimeProvider.System), TimeProvider.System);
        var all = await desk.GiveOutAsync(values[0]!);
        if (all["account"] is null && PartsGivenOut.All(part => ((JsonArray)all[part]!).Count == 0))
            return streams.Refuse($"nothing is kept about {values[0]}: no file was written");
        await File.WriteAllTextAsync(values[1]!, all.ToJsonString(Indented) + "\n");
        return await Said(
            FormattableString.Invariant(
                $"what is kept of {((JsonArray)all["cases"]!).Count} cases is in {values[1]}: it holds people's words, give it to nobody else"));
    }

    private Task<int> Said(string line)
    {
        streams.Out.WriteLine(line);
        return Task.FromResult(ExitCode.Done);
    }
}
