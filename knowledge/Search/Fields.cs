namespace DxAssistant.Knowledge.Search;

/// <summary>Names of the index's fields.</summary>
internal static class Fields
{
    /// <summary>The <see cref="NodeKind"/>.</summary>
    public const string Kind = "kind";
    /// <summary>Terms of one phrase.</summary>
    public const string Phrase = "phrase";
    /// <summary>Pairs of one phrase.</summary>
    public const string Pairs = "pairs";
    /// <summary>All terms of one phrase as one.</summary>
    public const string Exact = "exact";
    /// <summary>Terms of an entry's title.</summary>
    public const string Title = "title";
    /// <summary>Terms of an entry's title, phrases and body together.</summary>
    public const string Everything = "everything";
    /// <summary>Pairs of an entry's title and phrases.</summary>
    public const string EveryPair = "every-pair";
    /// <summary>The stems of an entry's words as written, without the glossary.</summary>
    public const string Plain = "plain";
    /// <summary>Every word as written, for the spelling.</summary>
    public const string Words = "words";
}
