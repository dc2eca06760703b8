namespace DxAssistant.Graph.Model;

/// <summary>Who may do a thing. A person may do what asks for a rank no higher than theirs.</summary>
/// <param name="Rank">0 or more; a higher rank may do more.</param>
public sealed record Role(string Id, int Rank)
{
    /// <summary>Everybody, an owner on the phone included.</summary>
    public static Role Anyone { get; } = new("anyone", 0);

    /// <summary>True when a person of this role may do what asks for <paramref name="needed"/>.</summary>
    public bool May(Role needed) => needed.Rank <= Rank;
}
