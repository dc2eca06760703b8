using System.Collections.Immutable;
using System.CommandLine;
using DxAssistant.Knowledge.Exchange;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>
/// <c>content import FILE --to FOLDER</c>: pages that hold what a table of faults and checks, or of symptoms and
/// faults, says.
/// </summary>
internal static class ContentImport
{
    public static Command Make(Streams streams)
    {
        var file = new Argument<string>("file")
        {
            Description =
                "CSV: what content export matrix writes, or a first column of faults and a column for each check, P(it "
                    + "fails | fault).",
        };
        var folder = new Option<string>("--to")
        {
            Description = "A new folder, or one of pages; what is there is left as it is.", HelpName = "FOLDER",
            Required = true,
        };
        var table = new Option<string>("--table")
        {
            Description =
                "What the file holds: faults (a row for each fault, checks in the columns) or symptoms (a row for each "
                    + "symptom, faults in the columns, in the cells how often: a number, per cent or a word).",
            HelpName = "ROWS",
            DefaultValueFactory = _ => "faults",
        };
        table.AcceptOnlyFromAmong("faults", "symptoms");
        var import = new Command("import",
            "Make pages from a table of faults and checks, or of symptoms and faults; lists what is left to write.") { file, folder, table };
        import.SetAction(call => Run(call.GetValue(file)!, call.GetValue(folder)!, call.GetValue(table)!, streams));
        return import;
    }

    private static int Run(string file, string folder, string table, Streams streams)
    {
        if (!File.Exists(file)) return streams.Refuse($"there is no file {file}: name a CSV file");
        bool isNew = !File.Exists(folder)
            && (!Directory.Exists(folder) || !Directory.EnumerateFileSystemEntries(folder).Any());
        if (!isNew && !File.Exists(Path.Combine(folder, "words.md")))
            return streams.Refuse($"{folder} is there already and holds no pages: name a new folder, or one of pages");
        DependencyMatrix matrix;
        try
        {
            string text = File.ReadAllText(file);
            matrix = table == "symptoms" ? SymptomTable.Read(text) : MatrixReader.Read(text);
        }
        catch (Exception error) when (error is FormatException or IOException)
        {
            foreach (string slip in error.Message.Split('\n')) streams.Error.WriteLine($"{file}: {slip}");
            return ExitCode.WrongCall;
        }

        return isNew ? Begin(matrix, folder, streams) : Join(matrix, folder, streams);
    }

    private static int Begin(DependencyMatrix matrix, string folder, Streams streams)
    {
        var (pages, toDos) = PageSkeleton.Of(matrix);
        return Write(matrix, folder, pages, toDos, [], streams);
    }

    private static int Join(DependencyMatrix matrix, string folder, Streams streams)
    {
        JoinedPages joined = JoinedPages.Of(matrix, ContentFolderReader.Read(folder));
        return Write(matrix, folder, joined.Pages, joined.ToDos, joined.Additions, streams);
    }

    private static int Write(
        DependencyMatrix matrix, string folder, ImmutableSortedDictionary<string, string> pages,
        ImmutableArray<string> toDos,
        ImmutableArray<(string Place, string Line)> additions, Streams streams)
    {
        foreach (var (path, text) in pages)
            if (!NewFiles.TryWrite(Path.Combine(folder, path), text, streams)) return ExitCode.WrongCall;
        foreach (string toDo in toDos) streams.Out.Write($"{toDo}\n");
        foreach (var place in additions.GroupBy(addition => addition.Place))
            streams.Out.Write(
                $"Put on {place.Key}:\n{string.Concat(place.Select(addition => $"  {addition.Line}\n"))}");
        if (matrix.Checks.IsEmpty)
            streams.Out.Write($"No check can see these faults yet: begin each with content new check {folder}\n");
        streams.Out.Write(
            $"{Counted.Of(pages.Count, "page")} in {folder}, {Counted.Of(toDos.Length, "line")} to write\n");
        return ExitCode.Done;
    }
}
