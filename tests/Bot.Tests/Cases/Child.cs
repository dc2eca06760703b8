using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A program that appends turns without end and says each one that was acknowledged, until it is
/// killed.</summary>
internal static class Child
{
    /// <param name="arguments">
    /// The file of cases or how to reach the database, and the number of turns under way at a time.
    /// </param>
    public static async Task<int> Main(string[] arguments)
    {
        if (arguments.Length != 2) return 2;
        await using var store = await PlaceOf(arguments[0]).OpenAsync(TimeProvider.System);
        int workers = int.Parse(arguments[1], CultureInfo.InvariantCulture);
        await Task.WhenAll(Enumerable.Range(0, workers).Select(worker => AppendForeverAsync(store, worker)));
        return 0;
    }

    /// <summary>The place a test names.</summary>
    public static CasePlace PlaceOf(string place) => place.StartsWith("Host=", StringComparison.Ordinal)
        ? CasePlace.Of(place, null) : CasePlace.Of(null, place);

    private static async Task AppendForeverAsync(ICaseStore store, int worker)
    {
        for (int turn = 0; ; turn++)
        {
            string turnId = string.Create(CultureInfo.InvariantCulture, $"turn{turn}");
            var result = await store.AppendAsync($"case{worker}", turn * 2, turnId,
                [new CodeReported("b4", turnId), new CodeReported("b5", turnId)]);
            if (result is AppendResult.Appended) await Console.Out.WriteLineAsync($"case{worker} {turnId}");
        }
    }
}
