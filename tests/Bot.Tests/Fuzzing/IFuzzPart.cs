namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>A part of the program that takes whatever comes.</summary>
internal interface IFuzzPart : IAsyncDisposable
{
    /// <summary>One lower-case word; the file of kept inputs is called so.</summary>
    string Name { get; }

    /// <summary>How many inputs a test tries.</summary>
    int Few { get; }

    /// <summary>Inputs to begin with; at least one.</summary>
    Task<IEnumerable<string>> BeginAsync();

    /// <summary>Makes another input of those in the pool.</summary>
    string Change(Random random, IReadOnlyList<string> pool);

    /// <summary>Tries one: gives a word or two for how it behaved, and throws when it should not have.</summary>
    Task<string> TakeAsync(string input);
}
