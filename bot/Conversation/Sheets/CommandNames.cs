using System.Text.Json;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation.Sheets;

/// <summary>The commands of the conversation as they are written in JSON and shown to people.</summary>
public static class CommandNames
{
    private static readonly Dictionary<string, CommandWord> ByName =
        Enum.GetValues<CommandWord>().ToDictionary(Name, StringComparer.Ordinal);

    /// <summary>All names, for a message.</summary>
    public static string List { get; } = string.Join(", ", ByName.Keys);

    public static CommandWord? Find(string name) => ByName.TryGetValue(name, out var word) ? word : null;

    public static string Name(CommandWord word) =>
        JsonSerializer.SerializeToElement(word, ConversationJson.Default.CommandWord).GetString()!;

    /// <summary>What stands on the button.</summary>
    public static string Label(CommandWord word) => word switch
    {
        CommandWord.Back => "Back",
        CommandWord.Why => "Why this?",
        CommandWord.Skip => "Skip",
        CommandWord.Cannot => "Cannot do that here",
        CommandWord.Unsure => "Not sure",
        CommandWord.Help => "Help",
        CommandWord.Again => "Say it again",
        CommandWord.StopHere => "Stop here",
        CommandWord.StartOver => "Start over",
        _ => throw new ArgumentOutOfRangeException(nameof(word), word, "not a command"),
    };
}
