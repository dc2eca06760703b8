namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>A part that takes plain text and needs nothing beside it.</summary>
/// <param name="take">Gives a word or two for how a text behaved, and throws when it should not have.</param>
internal abstract class FuzzPart(string name, int few, Func<string, string> take) : IFuzzPart
{
    public string Name => name;

    public int Few => few;

    public abstract Task<IEnumerable<string>> BeginAsync();

    public virtual string Change(Random random, IReadOnlyList<string> pool) => TextChanges.Make(random, pool);

    public Task<string> TakeAsync(string input) => Task.FromResult(take(input));

    public virtual ValueTask DisposeAsync() => ValueTask.CompletedTask;
}
