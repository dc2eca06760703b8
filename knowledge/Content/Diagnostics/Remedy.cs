using System.Diagnostics.CodeAnalysis;

namespace DxAssistant.Knowledge.Content;

/// <summary>What to do about a diagnostic, in words and, where only one thing can be meant, as a replacement.</summary>
/// <param name="Help">The remedy in words.</param>
internal sealed record Remedy(string Help)
{
    /// <summary>The words that are wrong; the replacement is for them alone and not for what stands around.</summary>
    public string? Wrong { get; init; }

    /// <summary>What to write for them; null when an author has to choose.</summary>
    public string? Instead { get; init; }

    [return: NotNullIfNotNull(nameof(help))]
    public static implicit operator Remedy?(string? help) => help is null ? null : new(help);

    /// <summary>The replacement, when what is marked is what is wrong and no more.</summary>
    public Mend? For(string marked, SourceSpan at) =>
        Instead is not null && marked == Wrong ? new Mend(at, Instead) : null;
}
