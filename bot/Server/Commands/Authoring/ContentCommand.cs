using System.CommandLine;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content</c>: work on the pages.</summary>
internal static class ContentCommand
{
    public static Command Make(Streams streams)
    {
        return new Command("content", "Work on the pages.")
        {
            ContentStart.Make(streams), ContentNew.Make(streams), ContentCheck.Make(streams),
            ContentExplain.Make(streams), ContentMend.Make(streams),
            new ContentCompare(streams).Make(), ContentServeEditor.Make(streams), ContentPreview.Make(streams),
            ContentSimulate.Make(streams), new ContentStats(streams).Make(), ContentExport.Make(streams),
            new ContentPicture(streams).Make(),
            ContentImport.Make(streams), new ContentFrequencies(streams).Make(),
        };
    }

    /// <summary>The folder of the pages, as an argument.</summary>
    public static Argument<string?> Folder()
    {
        var folder = new Argument<string?>("folder")
        {
            Description = "The folder of the pages; content when not given.",
            Arity = ArgumentArity.ZeroOrOne,
        };

        // An optional argument would take a mistyped option for its value.
        folder.Validators.Add(result =>
        {
            if (result.Tokens.Any(token => token.Value.StartsWith('-')))
                result.AddError($"there is no option {result.Tokens[0].Value}");
        });
        return folder;
    }
}
