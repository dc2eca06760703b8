using System.Text.Json;
using CsCheck;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Tests.Content;

public class IncrementalCompilerTests
{
    private static readonly string[] Paths = [.. TinyContent.Texts.Keys.Order(StringComparer.Ordinal)];

    // Words whose change reaches other pages: ids, kinds, headings, links, words of likelihood, series, roles.
    private static readonly (string Old, string New)[] Swaps =
    [
        ("always", "allways"), ("technician", "tecnician"), ("kind: fault", "kind: check"), ("id: ", "id: x-"),
        ("## ", "### "),
        ("../", ""), (".md", ".dm"), ("alder-one", "alder-two"), ("| Fault |", "| Faults |"), ("often", "usually"),
        ("minutes: 3", "minutes: 30"),
        ("start: true", "start: false"), ("#common-practice", "#common"), ("steady", "flashing"), ("good", "well"),
        ("[", "("), ("<svg", "<svh"),
        ("fan-plug", "fan-plugs"), ("none-of-these", "none"), ("part:", "parts:"), ("0.98", "0.97"), ("10 k", "11 k"),
        ("title>", "titel>"),
    ];

    private static readonly Gen<(int Page, int Swap, int What)[]> Edits =
        Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, 10_000], Gen.Int[0, 19]).Array[2, 12];

    // CsCheck prints the seed of a failing case.
    [Fact]
    public void Compile_AfterEachOfSomeRandomEdits_IsWhatAFullCompileGives() => Edits.Sample(edits =>
    {
        var texts = new Dictionary<string, string>(TinyContent.Texts);
        var compiler = new IncrementalCompiler();
        AssertSame(compiler, texts);
        foreach ((int page, int swap, int what) in edits)
        {
            Edit(texts, Paths[page % Paths.Length], Swaps[swap % Swaps.Length], what);
            AssertSame(compiler, texts);
        }
    }, iter: 60);

    // Several pages at once, as when a branch is changed, the folder edited in place as a watcher does it.
    [Fact]
    public void Compile_SomePagesEditedAtOnce_IsWhatAFullCompileGives() => Edits.Sample(edits =>
    {
        var texts = new Dictionary<string, string>(TinyContent.Texts);
        var compiler = new IncrementalCompiler();
        ContentFolder folder = TinyContent.Folder;
        compiler.Compile(folder);
        foreach ((int Page, int Swap, int What)[] together in edits.Chunk(3))
        {
            var before = new Dictionary<string, string>(texts);
            foreach ((int page, int swap, int what) in together) Edit(texts, Paths[page % Paths.Length],
                Swaps[swap % Swaps.Length], what);
            foreach (string gone in before.Keys.Except(texts.Keys)) folder = folder.Without(gone);
            foreach ((string path, string text) in texts)
                if (before.GetValueOrDefault(path) != text) folder = folder.With(new ContentFile(path, text));
            AssertSame(compiler, texts, folder);
        }
    }, iter: 20);

    [Fact]
    public void Compile_EachRuleBrokenAndMendedInTurn_IsWhatAFullCompileGives()
    {
        var compiler = new IncrementalCompiler();
        compiler.Compile(TinyContent.Folder);
        foreach (IContentRule rule in ContentRules.All)
        {
            ContentFolder bad = TinyContent.With(rule.Bad).Folder;
            Assert.Equal(ContentCompiler.Compile(bad).Diagnostics.AsEnumerable(), compiler.Compile(bad).Diagnostics);
            Assert.Empty(compiler.Compile(TinyContent.Folder).Diagnostics);
        }
    }

    [Fact]
    public void Compile_AnotherSentenceOnOnePage_KeepsTheOtherPagesOfTheLibrary()
    {
        var compiler = new IncrementalCompiler();
        Library before = compiler.Compile(TinyContent.Folder).Library!;
        Library after = compiler.Compile(TinyContent.With("checks/fan-plug.md",
            TinyContent.Texts["checks/fan-plug.md"].Replace("Press it home.", "Push it home."))).Library!;
        Assert.NotSame(before.Checks[new CheckId("fan-plug")], after.Checks[new CheckId("fan-plug")]);
        Assert.Same(before.Checks[new CheckId("room-sensor")], after.Checks[new CheckId("room-sensor")]);
        Assert.Same(before.Faults, after.Faults);
    }

    private static void Edit(Dictionary<string, string> texts, string path, (string Old, string New) swap, int what)
    {
        if (what == 0 && texts.Count > 5) texts.Remove(path);
        else if (what == 1) texts[path.Insert(path.LastIndexOf('/') + 1, "x-")] =
            texts.GetValueOrDefault(path, TinyContent.Texts[path]);
        else if (what < 8 || !texts.TryGetValue(path, out string? text)) texts[path] = TinyContent.Texts[path];
        else texts[path] = text.Replace(swap.Old, swap.New);
    }

    private static void AssertSame(IncrementalCompiler compiler, Dictionary<string, string> texts,
        ContentFolder? edited = null)
    {
        ContentFolder folder = ContentFolder.Of(texts.Select(page => new ContentFile(page.Key, page.Value)));
        CompileResult full = ContentCompiler.Compile(folder), quick = compiler.Compile(edited ?? folder);
        Assert.Equal(full.Diagnostics.AsEnumerable(), quick.Diagnostics);
        Assert.Equal(Text(full.Library), Text(quick.Library));
    }

    // Everything a library says, as text: judges and analyzers are code and left out.
    private static string Text(Library? library) => library is null ? "" : JsonSerializer.Serialize(new
    {
        library.Version, library.Symptoms, library.Refusals, library.Sources, library.Roles, library.Glossary,
        library.LikelihoodWords,
        Checks = library.Checks.Values.Select(
            check => (object)new { check.Title, check.Ask, check.How, check.Outcomes, check.Cautions, check.Sources,
                check.Series, check.Pictures }),
        Series = library.Series.Values.Select(
            series => (object)new { series.Title, series.Ratings, series.Codes, series.Coverage }),
        library.Faults, library.Repairs, library.Access, library.Cautions, library.Coverage, library.Prices,
        library.FrequencyWords, library.Settings.Values, library.Settings.Limits,
        Nodes = library.Graph.Checks.Select(
            check => (object)new { check.Id, check.Minutes, check.Access,
                Rows = library.Graph.Faults.Select(fault => check.Row(fault.Id)) }),
        Cures = library.Graph.Repairs.Select(repair => (object)new { repair.Id, repair.Fixes, repair.WrongMinutes }),
        Weights = library.Graph.Faults,
        Causes = library.Graph.Symptoms.Select(symptom =>
            (object)new { symptom.Id, Causes = symptom.Causes.Select(cause => $"{cause.Key} {cause.Value}") }),
        Links = library.Graph.Links.Select(link => link.ToString()),
        Findings = library.Graph.Findings.Select(finding => finding.ToString()),
        Other = library.Translations.Values.Select(
            other => (object)new { other.Symptoms, other.Repairs, other.Access }),
    }, Plain);

    private static readonly JsonSerializerOptions Plain = new()
    {
        Converters = { new AsText<SymptomId>(), new AsText<FaultId>(), new AsText<RepairId>(), new AsText<AccessId>(),
            new AsText<CheckId>() },
    };

    private sealed class AsText<T> : System.Text.Json.Serialization.JsonConverter<T> where T : notnull
    {
        public override T Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            throw new NotSupportedException();
        public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
            writer.WriteStringValue(value.ToString());
        public override void WriteAsPropertyName(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
            writer.WritePropertyName(value.ToString()!);
    }
}
