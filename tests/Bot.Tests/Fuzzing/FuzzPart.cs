namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>A part that takes plain text and needs nothing beside it.</summary>
/// <param name="take">Gives a word or two for how a text behaved, and throws when it should not have.</param>
internal abstract class FuzzPart(string name, int few, Func<string, string> take) : IFuzzPart
{
    public string Name => name;

    public int Few => few;

    public abstract Task<IEnumerable<string>> BeginAsync();

    /// <remarks>
    /// Short texts are taken many times quicker than long ones and say as much: one in twenty may be long.
    /// </remarks>
    public virtual string Change(Random random, IReadOnlyList<string> pool)
    {
        const int drawn = 4, longOnes = 20, usual = 400;
        if (random.Next(longOnes) == 0) return TextChanges.Make(random, pool);
        string[] texts = [.. Enumerable.Range(0, drawn).Select(_ => pool[random.Next(pool.Count)])
            .OrderBy(text => text.Length).Take(drawn / 2)];
        return TextChanges.Make(random, texts, usual);
    }

    public Task<string> TakeAsync(string input) => Task.FromResult(take(input));

    public virtual ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
