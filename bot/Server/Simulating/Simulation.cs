using System.Collections.Immutable;
using DxAssistant.Conversation;

namespace DxAssistant.Server.Simulating;

/// <summary>Plays many cases at once; each has its own draws, so their order does not matter.</summary>
internal static class Simulation
{
    public static ImmutableArray<SimulatedWalk> Play(
        Assistant assistant, ImmutableArray<SimulatedCase> cases, Action<int> progress)
    {
        var walks = new SimulatedWalk[cases.Length];
        var walker = new SimulatedWalker(assistant);
        int done = 0;
        var gate = new Lock();
        Parallel.For(0, cases.Length, place =>
        {
            walks[place] = walker.Walk(cases[place]);
            lock (gate)
            {
                if (++done % 10 == 0 || done == cases.Length) progress(done);
            }
        });
        return [.. walks];
    }
}
