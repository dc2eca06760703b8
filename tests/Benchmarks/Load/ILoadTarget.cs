using DxAssistant.Bot.Tests.Load;

namespace DxAssistant.Benchmarks.Load;

/// <summary>A server that can be sent conversations.</summary>
internal interface ILoadTarget : IAsyncDisposable
{
    ServerProcess Server { get; }

    /// <summary>Begins a conversation.</summary>
    Task<string> OpenAsync();

    /// <summary>Sends one turn; throws when it was not acknowledged.</summary>
    /// <param name="sequence">How many events the turns before left.</param>
    Task SendAsync(string caseId, long sequence, RecordedTurn turn);
}
