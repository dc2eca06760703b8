using System.CommandLine;
using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Server.Commands;

/// <summary><c>content import FILE --to FOLDER</c>: pages that hold what a table of faults and checks, or of symptoms and faults, says.</summary>
internal static class ContentImport
{
    public static Command Make(Streams streams)
    {
        var file = new Argument<string>("file")
        {
            Description = "CSV: what content export matrix writes, or a first column of faults and a column for each check, P(it fails | fault).",
        };
        var folder = new Option<string>("--to") { Description = "A new folder for the pages.", HelpName = "FOLDER", Required = true };
        var table = new Option<string>("--table")
        {
            Description = "What the file holds: faults (a row for each fault, checks in the columns) or symptoms (a row for each symptom, faults in the columns, in the cells how often: a number, per cent or a word).",
            HelpName = "ROWS",
            DefaultValueFactory = _ => "faults",
        };
        table.AcceptOnlyFromAmong("faults", "symptoms");
        var import = new Command("import", "Make pages from a table of faults and checks, or of symptoms and faults; lists what is left to write.") { file, folder, table };
        import.SetAction(call => Run(call.GetValue(file)!, call.GetValue(folder)!, call.GetValue(table)!, streams));
        return import;
    }

    private static int Run(string file, string folder, string table, Streams streams)
    {
        if (!File.Exists(file)) return streams.Refuse($"there is no file {file}: name a CSV file");
        if (File.Exists(folder) || Directory.Exists(folder)) return streams.Refuse($"{folder} is there already: name a new folder");
        DependencyMatrix matrix;
        try
        {
            string text = File.ReadAllText(file);
            matrix = table == "symptoms" ? SymptomTable.Read(text) : MatrixReader.Read(text);
        }
        catch (Exception error) when (error is FormatException or IOException)
        {
            return streams.Refuse($"{file}: {error.Message}");
        }

        var (pages, toDos) = PageSkeleton.Of(matrix);
        foreach (var (path, text) in pages)
            if (!NewFiles.TryWrite(Path.Combine(folder, path), text, streams)) return ExitCode.WrongCall;
        foreach (string toDo in toDos) streams.Out.Write($"{toDo}\n");
        if (matrix.Checks.IsEmpty) streams.Out.Write($"No check can see these faults yet: begin each with content new check {folder}\n");
        streams.Out.Write($"{pages.Count} pages in {folder}, {toDos.Length} lines to write\n");
        return ExitCode.Done;
    }
}
