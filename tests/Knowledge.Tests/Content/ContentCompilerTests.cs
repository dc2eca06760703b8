using CsCheck;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Tests.Content;

public class ContentCompilerTests
{
    private static readonly string[] Paths = [.. TinyContent.Texts.Keys.Order(StringComparer.Ordinal)];

    // Pieces that pages are made of, so that mutations hit structure and not only letters.
    private static readonly string[] Pieces =
    [
        "|", "\n", "---\n", "#", "## ", "[x](", ")", "../", "`", "<b>", "{", "}", "\"", ": ", "[", "]", "\\", "*",
            "- ", "1. ", "> ",
        "\t", "\0", "\uFFFD", "\uD83D", "é", "| a | b |\n|---|---|\n", "&nbsp;", "series x", "0.5", "always", "id: ",
            "kind: check\n", "!", "~~~\n",
    ];

    private const int Iterations = 400;

    // One change: where (page, place), how much is cut, what is put in.
    private static readonly Gen<(int Page, int Place, int Cut, int Piece)> Change =
        Gen.Select(Gen.Int[0, 10_000], Gen.Int[0, 100_000], Gen.Int[0, 40], Gen.Int[0, 10_000]);

    [Fact]
    public void Compile_TinyFolder_FindsNothing() =>
        Assert.Empty(ContentCompiler.Compile(TinyContent.Folder).Diagnostics);

    [Fact]
    public void Compile_NoPages_SaysWhichAreMissing()
    {
        CompileResult result = ContentCompiler.Compile(ContentFolder.Of([]));
        Assert.All(result.Diagnostics, found => Assert.Equal("missing-page", found.Name));
        Assert.Equal(7, result.Diagnostics.Length);
        Assert.Null(result.Library);
    }

    // CsCheck prints the seed of a failing case.
    [Fact]
    public void Compile_MutatedPages_NeverThrowsAndStaysInsideTheText() => Change.Array[1, 6].Sample(changes =>
    {
        ContentFolder folder = Mutated(changes);
        foreach (Diagnostic found in ContentCompiler.Compile(folder).Diagnostics)
        {
            ContentFile? file = folder.Files.FirstOrDefault(file => file.Path == found.At.Path);
            string[] lines = file?.Text.Split('\n') ?? [""];
            Assert.InRange(found.At.Line, 1, lines.Length);
            Assert.InRange(found.At.Column + found.At.Length, 1, lines[found.At.Line - 1].Length + 2);
            Assert.NotEmpty(DiagnosticText.Render(found, folder));
        }
    }, iter: Iterations);

    [Fact]
    public void Compile_ArbitraryText_NeverThrows() => Gen.String.Array[1, 4].Sample(texts =>
    {
        ContentFolder folder = ContentFolder.Of(texts.Select((text, place) =>
            new ContentFile($"faults/page-{place}.md", "---\nkind: fault\nid: page\n---\n" + text)));
        Assert.NotEmpty(ContentCompiler.Compile(folder).Diagnostics);
    }, iter: 200);

    [Fact]
    public void Compile_FilesInAnotherOrder_GiveTheSameResult() => Gen.Shuffle(Paths).Sample(paths =>
    {
        ContentFolder sorted = Broken(Paths);
        ContentFolder shuffled = Broken(paths);
        Assert.Equal(ContentCompiler.Compile(sorted).Diagnostics.AsEnumerable(),
            ContentCompiler.Compile(shuffled).Diagnostics);
        ContentFolder good = ContentFolder.Of(paths.Select(path => new ContentFile(path, TinyContent.Texts[path])));
        Assert.Equal(ContentCompiler.Compile(TinyContent.Folder).Library!.Version,
            ContentCompiler.Compile(good).Library!.Version);
    }, iter: 20);

    // Every line of every page below the top is taken out, then doubled. (The pages at the top define words, roles and
    // sources; a missing one is wrong in each place that uses it.) The row of the only fault that a check is for is two
    // mistakes in one: the check separates nothing, and no check sees the fault.
    [Fact]
    public void Compile_OneLineMissingOrDoubled_GivesOneDiagnosticAtMost()
    {
        int[] counts = [.. Paths.Where(path => path.Contains('/')).SelectMany(LineMistakes)
            .Select(folder => ContentCompiler.Compile(folder).Diagnostics.Length)];
        Assert.Equal(2, counts.Max());
        Assert.Equal(1, counts.Count(count => count == 2));
        Assert.InRange(counts.Count(count => count == 1), counts.Length / 2, counts.Length);
    }

    private static IEnumerable<ContentFolder> LineMistakes(string path)
    {
        string[] lines = TinyContent.Texts[path].Split('\n');
        for (int i = 1; i < lines.Length; i++)
        {
            if (lines[i].Length > 0)
            {
                yield return TinyContent.With(path, string.Join('\n', [.. lines[..i], .. lines[(i + 1)..]]));
                yield return TinyContent.With(path, string.Join('\n', [.. lines[..i], lines[i], .. lines[i..]]));
            }
        }
    }

    [Fact]
    public void Compile_DeepNesting_IsADiagnostic()
    {
        string deep = TinyContent.Texts["cautions/live-mains.md"] + "\n" + new string('>', 5_000) + " x\n";
        Assert.NotEmpty(ContentCompiler.Compile(TinyContent.With("cautions/live-mains.md", deep)).Diagnostics);
        string front = "---\nkind: " + new string('[', 5_000) + "\n---\n# Deep\n";
        Assert.NotEmpty(ContentCompiler.Compile(TinyContent.With("cautions/live-mains.md", front)).Diagnostics);
    }

    // A broken link every few characters on one line: each place must be found without counting the whole line again.
    [Fact]
    public void Compile_ThousandsOfFaultsOnOneLine_IsWorkInStepWithThem()
    {
        double Work(int count)
        {
            ContentFolder folder = TinyContent.With("checks/fan-plug.md", TinyContent.Texts["checks/fan-plug.md"]
                + string.Concat(Enumerable.Repeat("[a](b.md) ", count)));
            long before = GC.GetAllocatedBytesForCurrentThread();
            Assert.Equal(count, ContentCompiler.Compile(folder).Diagnostics.Length);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }

        Work(100);
        Assert.InRange(Work(4000) / Work(1000), 1, 6);
    }

    // Work is counted in bytes allocated, which no load of the machine changes.
    [Fact]
    public void Compile_FourTimesThePages_TakesAboutFourTimesTheWork()
    {
        ContentCompiler.Compile(Many(50));
        double small = Allocated(Many(100));
        double large = Allocated(Many(400));
        Assert.InRange(large / small, 2, 5.5);
    }

    private static double Allocated(ContentFolder folder)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        CompileResult result = ContentCompiler.Compile(folder);
        long after = GC.GetAllocatedBytesForCurrentThread();
        Assert.NotNull(result.Library);
        return after - before;
    }

    // The tiny folder with many more faults, each with a check and a repair of its own.
    private static ContentFolder Many(int count)
    {
        var pages = new Dictionary<string, string>(TinyContent.Texts);
        for (int i = 0; i < count; i++)
        {
            foreach (string path in new[] { "faults/fan-plug-loose.md", "checks/fan-plug.md", "repairs/seat-plug.md",
                "symptoms/fan-not-turning.md" })
            {
                pages[path.Replace(".md", $"-{i}.md")] = TinyContent.Texts[path]
                    .Replace("fan-plug-loose", $"fan-plug-loose-{i}").Replace("id: fan-plug\n", $"id: fan-plug-{i}\n")
                    .Replace("seat-plug", $"seat-plug-{i}").Replace("fan-not-turning", $"fan-not-turning-{i}");
            }
        }

        pages["index.md"] += string.Concat(Enumerable.Range(0, count).Select(i =>
            $"- [Fan plug](checks/fan-plug-{i}.md), [not turning](symptoms/fan-not-turning-{i}.md)\n"));
        return ContentFolder.Of(pages.Select(page => new ContentFile(page.Key, page.Value)));
    }

    private static ContentFolder Broken(IEnumerable<string> paths) => ContentFolder.Of(paths.Select(path =>
        new ContentFile(path, TinyContent.Texts[path].Replace("technician", "tecnician")
            .Replace("| always |", "| allways |"))));

    private static ContentFolder Mutated((int Page, int Place, int Cut, int Piece)[] changes)
    {
        var pages = new Dictionary<string, string>(TinyContent.Texts);
        foreach ((int page, int place, int cut, int piece) in changes)
        {
            string path = Paths[page % Paths.Length];
            string text = pages[path];
            int at = place % (text.Length + 1);
            pages[path] = text[..at] + Pieces[piece % Pieces.Length] + text[Math.Min(text.Length, at + cut)..];
        }

        return ContentFolder.Of(pages.Select(page => new ContentFile(page.Key, page.Value)));
    }
}
