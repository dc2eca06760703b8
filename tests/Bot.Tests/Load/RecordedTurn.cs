using System.Collections.Immutable;

namespace DxAssistant.Bot.Tests.Load;

/// <summary>One turn that was played once and can be sent again.</summary>
/// <param name="Message">What is posted to the case's turns, as JSON.</param>
/// <param name="TurnId">The name it bears in the message.</param>
/// <param name="Events">What it leaves in the log, each event as JSON.</param>
internal sealed record RecordedTurn(string Message, string TurnId, ImmutableArray<string> Events);
