using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>Questions of people who want a danger kept away: "how do I make sure that nobody bridges it", "why is it forbidden".</summary>
internal static class SafetyTalk
{
    private static readonly WordPattern Preventing = new("""
        stop people, prevent people, keep people, nobody works, nobody puts, nobody bridges, nobody ever, sure nobody, sure that nobody, lads not,
        crew not, crew that you not, team not, we not mix, toolbox talk, training sheet, training slide, safety poster, which poster, a leaflet,
        why is it forbidden, why is it illegal, why is it banned, why is it dangerous, is it dangerous that, should i complain, why can not owners,
        absolutely not, just so you know, the fine for, never bridge, never bypass, never vent, never mix, not touching anything
        """);

    private static readonly WordPattern MadeSafe = new("proved dead, proven dead, tested dead, proved it dead, measured dead");

    private static readonly WordPattern Assured = new("sure nobody bridges, sure nobody works, sure nobody puts");

    /// <summary>What shows that the danger is meant all the same.</summary>
    private static readonly WordPattern Meant = new("not trip, not~trip, not cut, not stop, keeps running, keep it running, anyway, can i, quick");

    /// <summary>Whether a message tells that a unit was made safe to work on: "locked off and proved dead, what next".</summary>
    public static bool TellsOfSafety(RequestWords request) => MadeSafe.IsIn(request) && !Meant.IsIn(request);

    /// <summary>Whether a message asks how a danger is kept away, or why it is one.</summary>
    public static bool Is(RequestWords request) => Assured.IsIn(request) || (Preventing.IsIn(request) && !Meant.IsIn(request));
}
