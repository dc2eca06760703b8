using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Speaking;

/// <summary>The drawings of pages, as pictures of a reply.</summary>
internal static class PagePictures
{
    public static Picture Of(PagePicture drawn) => new(
        drawn.Path, "page", drawn.Svg, drawn.Words.Text,
        [Slot.PageOf(drawn.Words.Place), new Provenance.Page(drawn.Path, drawn.Words.Text)]);
}
