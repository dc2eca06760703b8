using System.CommandLine;
using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content export FORM [folder]</c>: the fault graph in a form that other programs read.</summary>
internal static class ContentExport
{
    public static Command Make(Streams streams)
    {
        var form = new Argument<string>("form")
        {
            Description =
                "matrix (CSV: faults against symptoms and outcomes), dot (GraphViz), graphml (GraphML), fault-trees "
                    + "(Open-PSA XML).",
        };
        form.AcceptOnlyFromAmong("matrix", "dot", "graphml", "fault-trees");
        var folder = ContentCommand.Folder();
        var file = new Option<string?>("--to")
        {
            Description = "A new file. Default: standard output.", HelpName = "FILE",
        };
        var export =
            new Command("export", "Write the faults and what they show for other programs.") { form, folder, file };
        export.SetAction(call => Run(call.GetValue(form)!, call.GetValue(folder), call.GetValue(file), streams));
        return export;
    }

    private static int Run(string form, string? folder, string? file, Streams streams)
    {
        if (file is not null && (File.Exists(file) || Directory.Exists(file)))
            return streams.Refuse($"{file} is there already: name a new file");
        int code = OpenedPages.Open(folder, streams, out Library? library);
        if (library is null) return code;
        string text = Text(form, library);
        if (file is null) streams.Out.Write(text);
        else if (!NewFiles.TryWrite(file, text, streams)) return ExitCode.WrongCall;
        return ExitCode.Done;
    }

    private static string Text(string form, Library library) => form switch
    {
        "matrix" => MatrixWriter.Write(DependencyMatrix.Of(library.Graph)),
        "dot" => GraphVizText.Write(library),
        "graphml" => GraphMlText.Write(library),
        _ => FaultTreeText.Write(library),
    };
}
