using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation;

/// <summary>The commands that are offered beside a question.</summary>
internal static class Offered
{
    public static ImmutableArray<CommandWord> Always { get; } =
        [CommandWord.Back, CommandWord.Why, CommandWord.StartOver];

    /// <summary>Beside a check: it may be left out for three different reasons.</summary>
    public static ImmutableArray<CommandWord> AtCheck { get; } =
        [CommandWord.Back, CommandWord.Why, CommandWord.Skip, CommandWord.Unsure, CommandWord.Cannot,
            CommandWord.StartOver];

    /// <summary>Beside a safety step or a repair: it can be impossible here, but it cannot be skipped.</summary>
    public static ImmutableArray<CommandWord> AtStep { get; } =
        [CommandWord.Back, CommandWord.Why, CommandWord.Cannot, CommandWord.StartOver];
}
