using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Conversation;

namespace DxAssistant.Benchmarks.Load;

/// <summary>
/// Conversations that were played once, kept beside the results as long as the content is the same: playing them takes
/// longer than a run.
/// </summary>
internal sealed class WalkShelf(Assistant assistant, ResultFolder results)
{
    public ImmutableArray<ImmutableArray<RecordedTurn>> Take(int walks, int seed)
    {
        string file = Path.Combine(results.Working,
            FormattableString.Invariant($"often-{assistant.Library.Version}-{seed}-{walks}.json"));
        if (File.Exists(file))
            return JsonSerializer.Deserialize<ImmutableArray<ImmutableArray<RecordedTurn>>>(File.ReadAllBytes(file));
        var recorded = new WalkRecorder(assistant).RecordAsTheyComeUp(walks, seed);
        Directory.CreateDirectory(results.Working);
        File.WriteAllBytes(file, JsonSerializer.SerializeToUtf8Bytes(recorded));
        return recorded;
    }
}
