namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>Names of the index's fields. One document is one page.</summary>
internal static class Fields
{
    /// <summary>The stems of an entry's words as written, without the glossary.</summary>
    public const string Plain = "plain";
    /// <summary>Every word as written, for the spelling.</summary>
    public const string Words = "words";
}
