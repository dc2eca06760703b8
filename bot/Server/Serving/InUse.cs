using DxAssistant.Cases;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Serving;

/// <summary>The content that answers now. Replaced as a whole when the pages change.</summary>
/// <param name="Library">The content itself; null where a core without one answers, as in tests.</param>
internal sealed record InUse(IResponder Responder, TitleBook Titles, string Version, Library? Library = null)
{
    public static InUse Of(Library library) =>
        new(new LibraryResponder(library), TitleBook.Of(library), library.Version, library);
}
