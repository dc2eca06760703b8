namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Words by which a message tells what another did or what was met with, and asks for nothing.</summary>
internal static class ToldWords
{
    /// <summary>For the words that clear a rule.</summary>
    public const string Told = """
        found, someone, somebody, was, were, he, they, why, previous, last guy, last tech, last owner, when i got here, when i arrived, in the report
        """;
}
