using System.CommandLine;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Workbench.Drawing;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content picture KIND [folder]</c>: a picture of what the pages say together, as an SVG file.</summary>
internal sealed class ContentPicture(Streams streams)
{
    private readonly Argument<string> kind = Kind();
    private readonly Argument<string?> folder = ContentCommand.Folder();
    private readonly Option<string?> series = new("--series")
    {
        Description = "The series; for coverage, only this one.", HelpName = "ID",
    };
    private readonly Option<string?> symptom = new("--symptom")
    {
        Description = "For walk and symptom: the symptom.", HelpName = "ID",
    };
    private readonly Option<int?> checks = new("--checks")
    {
        Description = "For walk: plan it for so many checks on the page at most.", HelpName = "NUMBER",
    };
    private readonly Option<string?> language = new("--language")
    {
        Description = "The language of the words. Default: that of the pages.", HelpName = "ID",
    };
    private readonly Option<string?> file = new("--to")
    {
        Description = "A new file. Default: standard output.", HelpName = "FILE",
    };

    public Command Make()
    {
        var picture = new Command("picture", "Draw a walk for the van, a symptom, or what the pages cover.")
            { kind, folder, series, symptom, checks, language, file };
        picture.SetAction(Run);
        return picture;
    }

    private static Argument<string> Kind()
    {
        var kind = new Argument<string>("kind")
        {
            Description =
                "walk (the planned walk on one page of A4), symptom (its faults, checks and repairs), coverage (what "
                    + "the checks decide).",
        };
        kind.AcceptOnlyFromAmong(LibraryPictures.Walk, LibraryPictures.Symptom, LibraryPictures.Coverage);
        return kind;
    }

    private int Run(ParseResult call)
    {
        string? to = call.GetValue(file);
        if (to is not null && (File.Exists(to) || Directory.Exists(to)))
            return streams.Refuse($"{to} is there already: name a new file");
        int code = OpenedPages.Open(call.GetValue(folder), streams, out Library? library);
        if (library is null) return code;
        if (Lacking(call, library) is { } lacking) return streams.Refuse(lacking);
        try
        {
            string text =
                PlannedFile.Of(LibraryPictures.Of(library, Asked(call, library)), Pages(call.GetValue(folder), to));
            if (to is null) streams.Out.Write(text);
            else if (!NewFiles.TryWrite(to, text, streams)) return ExitCode.WrongCall;
            return ExitCode.Done;
        }
        catch (ArgumentException error)
        {
            return streams.Refuse(error.Message);
        }
    }

    // What must be named and is not, with what may be named; null when nothing lacks.
    private string? Lacking(ParseResult call, Library library)
    {
        string drawn = call.GetValue(kind)!;
        if (drawn == LibraryPictures.Coverage) return null;
        if (call.GetValue(series) is null && library.Series.Count > 1)
            return $"a {drawn} is drawn for one series: add --series with one of {string.Join(", ", library.Series.Keys)}";
        return call.GetValue(symptom) is null
            ? $"a {drawn} is drawn for one symptom: add --symptom with one of {string.Join(", ", library.Symptoms.Keys)}"
            : null;
    }

    // Where there is one series only it need not be named.
    private PictureAsked Asked(ParseResult call, Library library) => new(
        call.GetValue(kind)!, call.GetValue(series)
            ?? (library.Series.Count == 1
                && call.GetValue(kind) != LibraryPictures.Coverage ? library.Series.Keys.First() : null),
        call.GetValue(symptom), call.GetValue(checks), call.GetValue(language));

    // Links lead from the file to the pages beside it; what goes to standard output is taken to lie among the pages.
    private static string Pages(string? folder, string? to) => to is null
        ? ""
        : Path.GetRelativePath(Path.GetDirectoryName(Path.GetFullPath(to))!, folder ?? ContentCheck.UsualFolder)
            .Replace('\\', '/') + "/";
}
