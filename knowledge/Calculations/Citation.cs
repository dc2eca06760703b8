namespace DxAssistant.Knowledge.Calculations;

/// <summary>Where a number, a formula or a limit comes from.</summary>
/// <param name="Document">Standard, paper or handbook, with its edition.</param>
/// <param name="Place">Clause, table or page; null when the whole document.</param>
/// <param name="Link">Page and heading of the content that says so; null for what the program itself holds.</param>
public sealed record Citation(
    string Document, string? Place = null, CitationStanding Standing = CitationStanding.Published, string? Link = null)
{
    /// <summary>Common practice, no source.</summary>
    public static Citation CommonPractice { get; } = new(
        "Common practice, no source", null, CitationStanding.CommonPractice);

    /// <summary>A textbook relation that follows from definitions.</summary>
    /// <param name="relation">What it follows from.</param>
    public static Citation Textbook(string relation) => new("Textbook relation", relation);

    /// <summary>The same source, marked as quoted from memory.</summary>
    public Citation FromMemory() => this with { Standing = CitationStanding.FromMemory };

    public override string ToString() =>
        (Place is null ? Document : Document + ", " + Place)
            + (Standing == CitationStanding.FromMemory ? " (from memory)" : "");
}
