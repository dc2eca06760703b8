using DxAssistant.Cases;
using Microsoft.Bot.Schema;

namespace DxAssistant.Server.Channels;

/// <summary>What one activity on the local channel led to.</summary>
/// <param name="Answer">What the desk did; null when the activity was not for the desk.</param>
internal sealed record LocalTurn(IReadOnlyList<Activity> Activities, DeskAnswer? Answer);
