namespace DxAssistant.Conversation.State;

/// <summary>A repair that was made on the same unit before, after which it worked.</summary>
/// <param name="Case">The case it was made in; <see cref="OfAnother"/> when that is not to be known here.</param>
/// <param name="Done">The day; of another's case the first of its month.</param>
/// <param name="Days">How many days before it was looked up.</param>
public sealed record EarlierWork(string Case, DateOnly Done, int Days, string Repair, string Fault)
{
    /// <summary>Stands for a case of somebody else.</summary>
    public const string OfAnother = "";

    /// <summary>Whether only the month is known.</summary>
    public bool IsOfAnother => Case == OfAnother;
}
