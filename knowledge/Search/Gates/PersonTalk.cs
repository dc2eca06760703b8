using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Talk of how somebody is, in words that the trade has too: "I am drained", "the apprentice has a short fuse".
/// </summary>
internal static class PersonTalk
{
    private static readonly WordPattern People = new("""
        my brain, my mind, between me and, me and you, you and me, my marriage, my patience, am fried, am overloaded,
        am burnt out, am knackered, am under pressure, pressure at work, same wavelength, has a short fuse,
        blew a fuse at
        """);

    /// <summary>Whether a message is such talk, and names no unit.</summary>
    public static bool Is(RequestWords request) => People.IsIn(request) && !OffTopicTalk.NamesOurs(request);
}
