using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>Talk of how somebody is, in words that the trade has too: "I am drained", "the apprentice has a short fuse".</summary>
internal static class PersonTalk
{
    private static readonly WordPattern People = new("""
        my brain, my mind, my boss, my supervisor, my manager, my colleague, my back is, my knees, between me and, me and you, you and me, us two, my marriage, my patience,
        i am drained, im drained, am fried, im fried, am overloaded, im overloaded, am burnt out, im burnt out, am knackered, im knackered, am under pressure, im under pressure, pressure at work,
        apprentice has, boss has, same wavelength, has a short fuse, blew a fuse at
        """);

    /// <summary>Whether a message is such talk, and names no unit.</summary>
    public static bool Is(RequestWords request) => People.IsIn(request) && !OffTopicTalk.NamesOurs(request);
}
