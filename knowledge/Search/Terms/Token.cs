namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>One piece of a message on its way to the index.</summary>
/// <param name="Term">
/// The stem, in the glossary's words where it knows the said ones; "not~x" where x was negated.
/// </param>
/// <param name="Said">The word as it was said.</param>
/// <param name="Position">Which word of the message, from 0; the words of one glossary concept share one.</param>
/// <param name="Role">Whether the term carries meaning.</param>
internal sealed record Token(string Term, string Said, int Position, bool StartsClause, TokenRole Role)
{
    /// <summary>Whether the glossary knows what was said.</summary>
    public bool IsConcept { get; init; }

    public const string NotMark = "not~";

    public bool IsNegated => Term.StartsWith(NotMark, StringComparison.Ordinal);

    /// <summary>The term without its negation.</summary>
    public string Stem => IsNegated ? Term[NotMark.Length..] : Term;
}
