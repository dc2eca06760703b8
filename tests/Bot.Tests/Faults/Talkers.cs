using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Diagnostics;
using System.Net;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Load;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// People who talk on whatever happens to the servers: a turn that is not answered is sent again under its name, to
/// whichever server there is, until it is.
/// </summary>
/// <param name="servers">Where servers may be reached now; none while there is none.</param>
internal sealed class Talkers(ImmutableArray<ImmutableArray<RecordedTurn>> walks, Func<IReadOnlyList<Uri>> servers)
    : IAsyncDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(20);

    private readonly CancellationTokenSource end = new();
    private readonly ConcurrentDictionary<Uri, CaseClient> clients = new();
    private readonly List<Task> talking = [];
    private readonly ConcurrentQueue<TimeSpan> waits = new();
    private int asked;
    private long longestWait;

    /// <summary>What was answered, in the order of the answers within a case.</summary>
    public ConcurrentQueue<(string CaseId, string TurnId)> Acknowledged { get; } = new();

    /// <summary>Claims that were begun from cases whose conversation had come to its end.</summary>
    public ConcurrentQueue<string> Claims { get; } = new();

    /// <summary>How often a turn was not answered and had to be sent again.</summary>
    public int Again { get; private set; }

    /// <summary>How long each thinks after an answer.</summary>
    public TimeSpan Pace { get; private init; }

    /// <summary>The longest that one turn took until it was answered.</summary>
    public TimeSpan LongestWait => TimeSpan.FromTicks(Interlocked.Read(ref longestWait));

    /// <summary>Answers that were neither a turn taken nor one to be sent again.</summary>
    public ConcurrentQueue<string> Odd { get; } = new();

    /// <summary>How long each turn took that was answered since this was asked last.</summary>
    public List<TimeSpan> TakeWaits()
    {
        var taken = new List<TimeSpan>();
        while (waits.TryDequeue(out var wait)) taken.Add(wait);
        return taken;
    }

    /// <summary>People with conversations recorded on the shipped pages.</summary>
    public static Talkers With(int walks, int seed, Func<IReadOnlyList<Uri>> servers, TimeSpan pace = default) =>
        new(new WalkRecorder(ShippedContent.Assistant).Record(walks, seed), servers) { Pace = pace };

    public void Begin(int people)
    {
        for (int person = 0; person < people; person++)
        {
            int from = person;
            talking.Add(Task.Run(() => TalkAsync(from)));
        }
    }

    /// <summary>Waits until so many turns more are answered.</summary>
    public async Task AnsweredAsync(int more)
    {
        int before = Acknowledged.Count;
        while (Acknowledged.Count < before + more && talking.TrueForAll(one => !one.IsFaulted)) await Task.Delay(Pause);
    }

    /// <summary>Lets everybody finish the turn at hand.</summary>
    public async Task EndAsync()
    {
        await end.CancelAsync();
        await Task.WhenAll(talking);
    }

    public async ValueTask DisposeAsync()
    {
        await end.CancelAsync();
        foreach (var client in clients.Values) client.Dispose();
        end.Dispose();
    }

    private async Task TalkAsync(int place)
    {
        for (; !end.IsCancellationRequested; place++)
        {
            if (await UntilAnsweredAsync(async client => await client.OpenAsync()) is not { } caseId) return;
            foreach (var turn in walks[place % walks.Length])
            {
                if (end.IsCancellationRequested) return;
                if (await UntilAnsweredAsync(client => SendAsync(client, caseId, turn)) is null) return;
                Acknowledged.Enqueue((caseId, turn.TurnId));
                if (Pace > TimeSpan.Zero) await ThinkAsync();
            }

            if (await UntilAnsweredAsync(client => client.ClaimAsync(caseId)) is { Length: > 0 } claim)
                Claims.Enqueue(claim);
        }
    }

    private async Task ThinkAsync()
    {
        try
        {
            await Task.Delay(Pace, end.Token);
        }
        catch (OperationCanceledException)
        {
            // The end has come.
        }
    }

    private async Task<string?> SendAsync(CaseClient client, string caseId, RecordedTurn turn)
    {
        var status = await client.SendAsync(caseId, turn);
        if (status == HttpStatusCode.OK) return turn.TurnId;
        if (status != HttpStatusCode.ServiceUnavailable) Odd.Enqueue($"{caseId} {turn.TurnId}: {status}");
        throw new HttpRequestException($"{status}");
    }

    // What is under way when the end comes is sent again until it is answered, as long as there is a server.
    private async Task<string?> UntilAnsweredAsync(Func<CaseClient, Task<string?>> ask)
    {
        long begun = Stopwatch.GetTimestamp();
        while (servers() is var there && (there.Count > 0 || !end.IsCancellationRequested))
        {
            if (there.Count > 0)
            {
                try
                {
                    var client = clients.GetOrAdd(there[Interlocked.Increment(ref asked) % there.Count],
                        address => new CaseClient(address));
                    string? answer = await ask(client);
                    var took = Stopwatch.GetElapsedTime(begun);
                    waits.Enqueue(took);
                    Longest(took.Ticks);
                    return answer;
                }
                catch (Exception error) when (error is HttpRequestException or IOException or TaskCanceledException)
                {
                    Again++;
                    if (error is HttpRequestException { StatusCode: not null
                        and not HttpStatusCode.ServiceUnavailable })
                        Odd.Enqueue(error.Message);
                }
            }

            await Task.Delay(Pause);
        }

        return null;
    }

    private void Longest(long ticks)
    {
        long known;
        while (ticks > (known = Interlocked.Read(ref longestWait))
            && Interlocked.CompareExchange(ref longestWait, ticks, known) != known)
        {
        }
    }
}
