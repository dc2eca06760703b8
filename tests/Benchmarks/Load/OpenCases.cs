using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Serving;

namespace DxAssistant.Benchmarks.Load;

/// <summary>What the desk of the program keeps in memory of cases whose whole conversation it has just taken.</summary>
internal sealed class OpenCases(Library library, ImmutableArray<ImmutableArray<RecordedTurn>> walks)
{
    public async Task<string> MeasureAsync(int cases)
    {
        var folder = Directory.CreateTempSubdirectory("dx-open-");
        var responder = new LibraryResponder(library);
        await using var store = SqliteCaseStore.Open(Path.Combine(folder.FullName, "cases.db"), TimeProvider.System);
        await TalkAsync(new CaseDesk(store, () => responder), "first", cases);
        var desk = new CaseDesk(store, () => responder);
        long before = GC.GetTotalMemory(forceFullCollection: true);
        await TalkAsync(desk, "second", cases);
        long after = GC.GetTotalMemory(forceFullCollection: true);
        GC.KeepAlive(desk);
        await store.DisposeAsync();
        folder.Delete(recursive: true);
        return FormattableString.Invariant(
            $"{(after - before) / 1024.0 / cases:0.0} kB a case: the managed heap after a full collection, {cases} whole conversations in mind of the desk, against before. The bar is 50 kB.");
    }

    // The same conversations twice: what their plans and pages take is in memory before the first figure.
    private async Task TalkAsync(CaseDesk desk, string name, int cases)
    {
        for (int number = 0; number < cases; number++)
        {
            string caseId = FormattableString.Invariant($"{name}-{number}");
            await desk.OpenAsync(caseId, "technician");
            foreach (var turn in walks[number % walks.Length]) await desk.TakeAsync(caseId, MessageOf(turn));
        }
    }

    private static Message MessageOf(RecordedTurn turn)
    {
        using var json = JsonDocument.Parse(turn.Message);
        return AnswerReader.TryRead(json.RootElement, out var body, out string? problem)
            ? new Message(turn.TurnId, body) : throw new InvalidOperationException(problem);
    }
}
