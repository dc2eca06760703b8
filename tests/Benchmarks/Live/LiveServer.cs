using System.Diagnostics;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Server.Serving;

namespace DxAssistant.Benchmarks.Live;

/// <summary>The content as the chat server has it, watched.</summary>
internal sealed class LiveServer : IDisposable
{
    private readonly LiveContent content;

    public LiveServer(string folder)
    {
        content = LiveContent.Open(folder, Console.Error)
            ?? throw new InvalidOperationException("the pages have errors");
        content.Watch(TimeProvider.System);
    }

    /// <summary>Milliseconds from a save until the first turn of a case is answered on the new version, and until typed
    /// words are.</summary>
    public (double Turn, double Words) Edit(GrowingFolderOnDisk folder, int edit)
    {
        string before = content.Current.Version;
        folder.Edit(edit);
        long saved = Stopwatch.GetTimestamp();
        SpinWait.SpinUntil(() => content.Current.Version != before);
        Turn first = content.Current.Responder.Respond([], new Message("first", new MessageBody.Opening()));
        double turn = Stopwatch.GetElapsedTime(saved).TotalMilliseconds;
        content.Current.Responder.Respond(first.Events,
            new Message("second", new MessageBody.Words("the fan does not turn")));
        return (turn, Stopwatch.GetElapsedTime(saved).TotalMilliseconds);
    }

    public void Dispose() => content.Dispose();
}
