using System.Collections.Immutable;
using System.CommandLine;
using DxAssistant.Cases;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Workbench.Comparing;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content compare OLD NEW</c>: what an edit does to the walks.</summary>
internal sealed class ContentCompare(Streams streams)
{
    private const int MostCases = 100_000;

    private readonly Argument<string> old = new("old")
    {
        Description = "A folder of pages, or a commit when Git is there.",
    };
    private readonly Argument<string> fresh = new("new") { Description = "The pages after the edit, likewise." };
    private readonly Option<string> inside = new("--inside")
        { Description = "Where the pages lie inside a commit.", HelpName = "FOLDER",
            DefaultValueFactory = _ => ContentCheck.UsualFolder };
    private readonly Option<int> walks =
        Number("--walks", "Walks played where exact figures would take too long.", 100);
    private readonly Option<int> seed = Number("--seed", "Where the draws of the walks begin.", 1);
    private readonly Option<int> work =
        Number("--work", "The planner's work for a step; conversations use 2000000.", 250_000);
    private readonly Option<double?> minutes =
        Floor<double?>("--longer", "Exit 1 when the walks of a symptom take this many minutes more.", "MINUTES");
    private readonly Option<double?> vain =
        Floor<double?>("--in-vain", "Exit 1 when a symptom has this many repairs in vain more a walk.", "N");
    private readonly Option<double?> isolated = Floor<double?>("--isolated",
        "Exit 1 when the first repair mends a symptom this many points of 100 less often.", "POINTS");
    private readonly Option<string?> cases = new("--cases")
    {
        Description = "A file of cases to say again; it is only read.", HelpName = "FILE",
    };
    private readonly Option<string?> database = new("--cases-store")
        { Description = "A PostgreSQL database of cases to say again, in the place of a file; it is only read.",
            HelpName = "\"Host=…;Username=…;Database=…\"" };
    private readonly Option<int?> conclusions =
        Floor<int?>("--conclusions", "Exit 1 when more cases than this end otherwise.", "N");

    public Command Make()
    {
        var compare =
            new Command("compare", "Say what an edit does: minutes, checks, repairs in vain, changed walks and cases.")
            { old, fresh, inside, walks, seed, work, minutes, vain, isolated, cases, database, conclusions };
        compare.SetAction(RunAsync);
        return compare;
    }

    private async Task<int> RunAsync(ParseResult call, CancellationToken cancel)
    {
        if (call.GetValue(walks) < 1 || call.GetValue(work) < 1)
            return streams.Refuse("--walks and --work are 1 or more");
        if (call.GetValue(cases) is { } named && !File.Exists(named))
            return streams.Refuse($"there is no file {named}: name a file of cases");
        if (call.GetValue(cases) is not null && call.GetValue(database) is not null)
            return streams.Refuse("--cases and --cases-store both say which cases: give one of them");
        if (Open(call.GetValue(old)!, call, out Library? before) is { } wrongOld) return wrongOld;
        if (Open(call.GetValue(fresh)!, call, out Library? after) is { } wrongNew) return wrongNew;
        var comparison = new LibraryComparison(before!, after!, call.GetValue(walks), (ulong)call.GetValue(seed),
            call.GetValue(work))
        {
            Progress = symptom => streams.Error.Write($"\r{symptom,-60}"),
        };
        ImmutableArray<ChangedSymptom> symptoms = comparison.Changed();
        if (!symptoms.IsEmpty) streams.Error.WriteLine();
        try
        {
            return await ReportAsync(call, before!, after!, symptoms, cancel);
        }
        catch (CaseFileException error)
        {
            return streams.Refuse(error.Message);
        }
    }

    private async Task<int> ReportAsync(
        ParseResult call, Library before, Library after, ImmutableArray<ChangedSymptom> symptoms,
        CancellationToken cancel)
    {
        var floors = new Floors(call.GetValue(minutes), call.GetValue(vain), call.GetValue(isolated),
            call.GetValue(conclusions));
        (ImmutableArray<ChangedConclusion>? changed, int replayed) =
            (call.GetValue(cases), call.GetValue(database)) switch
        {
            ({ } file, _) => await ReplayCopyAsync(file, before, after, cancel),
            (_, { } named) => await ReplayAsync(new CasePlace.InDatabase(named), before, after, cancel),
            _ => (null, 0),
        };
        ImmutableArray<BrokenFloor> broken = [.. symptoms.SelectMany(floors.BrokenBy)];
        if (changed is { } ended && ended.Length > floors.Conclusions)
            broken = broken.Add(new BrokenFloor($"{ended.Length} cases end otherwise"));
        ComparisonReport.Write(streams.Out, symptoms, changed, replayed, broken);
        return broken.All(floor => floor.MayBeChance) ? ExitCode.Done : ExitCode.Problems;
    }

    // Cases are said again on a copy: opening a file of cases may bring it up to date, and this command only reads.
    private static async Task<(ImmutableArray<ChangedConclusion>? Changed, int Replayed)> ReplayCopyAsync(
        string file, Library before, Library after, CancellationToken cancel)
    {
        string copy = Path.Combine(Directory.CreateTempSubdirectory("cases").FullName, "cases.db");
        try
        {
            foreach (string end in new[] { "", "-wal" }) if (File.Exists(file + end)) File.Copy(file + end, copy + end);
            return await ReplayAsync(new CasePlace.InFile(copy), before, after, cancel);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(copy)!, recursive: true);
        }
    }

    private static async Task<(ImmutableArray<ChangedConclusion>? Changed, int Replayed)> ReplayAsync(
        CasePlace place, Library before, Library after, CancellationToken cancel)
    {
        await using ICaseStore store = await place.OpenAsync(TimeProvider.System, cancel);
        var replay = new CaseReplay(before, after);
        var changed = ImmutableArray.CreateBuilder<ChangedConclusion>();
        ImmutableArray<CaseLine> all = await store.ListAsync(MostCases, cancel);
        foreach (CaseLine line in all.OrderBy(line => line.Id, StringComparer.Ordinal))
            if (replay.Compare(line.Id, await store.ReadAsync(line.Id, cancel)) is { } ended) changed.Add(ended);
        return (changed.ToImmutable(), all.Length);
    }

    private int? Open(string name, ParseResult call, out Library? library)
    {
        library = null;
        if (PagesAt.Read(name, call.GetValue(inside)!, out string? problem) is not { } pages)
            return streams.Refuse(problem!);
        library = ContentCompiler.Compile(pages).Library;
        if (library is not null) return null;
        streams.Error.WriteLine($"the pages of {name} have errors: content check lists them");
        return ExitCode.Problems;
    }

    private static Option<int> Number(string name, string description, int usual) =>
        new(name) { Description = description, HelpName = "N", DefaultValueFactory = _ => usual };

    private static Option<T> Floor<T>(string name, string description, string unit) =>
        new(name) { Description = description, HelpName = unit };
}
