using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using DxAssistant.Benchmarks.Load;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Tests.Content;
using DxAssistant.Server.Chat;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// A digest of all that is said in recorded conversations, and of the reasons for it: a change that is to make turns
/// cheaper and nothing else leaves it as it is.
/// </summary>
/// <remarks><c>DX_WALKS</c> says how many conversations.</remarks>
internal sealed class RepliesGroup : IBenchmarkGroup
{
    private const int Seed = 20261126;

    // So many turns from one "why" to the next.
    private const int Between = 7;

    private readonly int count =
        int.TryParse(Environment.GetEnvironmentVariable("DX_WALKS"), NumberStyles.None, CultureInfo.InvariantCulture,
            out int given) ? given : 150;

    public string Name => "replies";

    public void Run(ResultFolder results)
    {
        var library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;
        var walks = new WalkShelf(new Assistant(library), results).Take(count, Seed);
        var assistant = new Assistant(library);
        using var digest = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        int turns = 0;
        var begun = Environment.CpuUsage.TotalTime;
        foreach (var walk in walks)
        {
            var state =
                assistant.Take(CaseState.New, new Message(CaseDesk.OpeningTurn, new MessageBody.Opening())).After!;
            foreach (var recorded in walk)
            {
                state = Said(assistant, state, MessageOf(recorded), digest);
                if (turns++ % Between == 0)
                    Said(assistant, state,
                        new Message($"{recorded.TurnId}-why", new MessageBody.Command(CommandWord.Why)), digest);
            }
        }

        double each = (Environment.CpuUsage.TotalTime - begun).TotalMilliseconds / turns;
        Console.WriteLine(
            FormattableString.Invariant(
                $"{turns} turns, {each:0.00} ms of a processor each: {Convert.ToHexStringLower(digest.GetHashAndReset())}"));
    }

    private static CaseState Said(Assistant assistant, CaseState state, Message message, IncrementalHash digest)
    {
        Turn turn = assistant.Take(state, message);
        digest.AppendData(JsonSerializer.SerializeToUtf8Bytes(turn.Reply, ChatJson.Options));
        return turn.After!;
    }

    private static Message MessageOf(RecordedTurn turn)
    {
        using var json = JsonDocument.Parse(turn.Message);
        return AnswerReader.TryRead(json.RootElement, out var body, out string? problem)
            ? new Message(turn.TurnId, body) : throw new InvalidOperationException(problem);
    }
}
