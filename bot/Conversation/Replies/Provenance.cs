using System.Text.Json.Serialization;

namespace DxAssistant.Conversation.Replies;

/// <summary>Where a piece of a reply comes from. There are exactly four origins.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "origin")]
[JsonDerivedType(typeof(Page), "page")]
[JsonDerivedType(typeof(Phrase), "phrase")]
[JsonDerivedType(typeof(Calculation), "calculation")]
[JsonDerivedType(typeof(Person), "person")]
public abstract record Provenance
{
    private Provenance() { }

    /// <summary>A sentence of a content page.</summary>
    public sealed record Page(string Path, string Heading) : Provenance;

    /// <summary>A phrase of the phrase file.</summary>
    public sealed record Phrase(string Id) : Provenance;

    /// <summary>The rendering of a calculation.</summary>
    public sealed record Calculation(string Name, string Source) : Provenance;

    /// <summary>The person's own words or readings, said back.</summary>
    public sealed record Person : Provenance;
}
