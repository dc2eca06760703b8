using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Languages;

/// <summary>A page and the page that says it in another language.</summary>
internal sealed record TranslatedPair(Page Main, Page Said)
{
    /// <summary>The pairs of known kinds, in the order of their paths.</summary>
    public static IEnumerable<TranslatedPair> All(Pages pages) =>
        from said in pages.Translations
        let main = pages.AtPath(LanguageOfPath.MainOf(said.Path))
        where main is { Kind: not null, Front: not null } && said.Title is not null
        select new TranslatedPair(main, said);
}
