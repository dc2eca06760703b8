using DxAssistant.Cases;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Offline;

namespace DxAssistant.Server.Serving;

/// <summary>The content that answers now. Replaced as a whole when the pages change.</summary>
/// <param name="Packed">The pages for work without signal; null where there are none.</param>
/// <param name="Library">The content itself; null where a core without one answers, as in tests.</param>
internal sealed record InUse(
    IResponder Responder, TitleBook Titles, string Version, Library? Library = null, PackedPages? Packed = null)
{
    /// <param name="pages">
    /// What the library was made of; null where nothing is handed out for work without signal.
    /// </param>
    /// <param name="late">
    /// Whether taps are answered before the search is ready; the first typed message may wait for it.
    /// <see cref="GetReady"/> has it made in the background.
    /// </param>
    public static InUse Of(Library library, ContentFolder? pages = null, bool late = false) => new(
        new LibraryResponder(library, late), TitleBook.Of(library), library.Version, library,
        pages is null ? null : new PackedPages(pages));

    /// <summary>Has the search made in the background, where that was left for later.</summary>
    public void GetReady() => (Responder as LibraryResponder)?.GetReady();

    /// <summary>How the faults in question of a case narrowed; null while nothing has, or without content.</summary>
    public Picture? Narrowing(CaseState state) => Library is null ? null : BeliefStory.Of(Library, state);
}
