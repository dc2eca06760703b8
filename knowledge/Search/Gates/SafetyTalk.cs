using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Talk of people who want a danger kept away: "how do I make sure that nobody bridges it", "I told him never, only dry
/// nitrogen".
/// </summary>
internal static class SafetyTalk
{
    private static readonly WordPattern Preventing = new("""
        stop people, prevent people, keep people, nobody works, nobody puts, nobody bridges, nobody ever, sure nobody,
        sure that nobody, lads not, crew not, crew that you not, team not, we not mix, toolbox talk, training sheet,
        training slide, safety poster, which poster, a leaflet, why is it forbidden, why is it illegal,
        why is it banned, why is it dangerous, is it dangerous that, should i complain, why can not owners,
        absolutely not, just so you know, the fine for, never bridge, never bypass, never vent, never mix,
        not touching anything
        """);

    /// <summary>What people say who kept to the safe way, or held others to it.</summary>
    private static readonly WordPattern Kept = new("""
        i not work live, we not work live, said not way, told him not, told them not, told her not, told owner not,
        told the owner not, told the customer not, told customer not, told the apprentice not, lock and tag,
        locked and tagged, tied off, mate foot it, footed the ladder, guard back on before, covers back on before,
        will not bypass, will not bridge, will not jumper, will not vent, will not run it, i refused to, we refused to,
        talked him out, talked her out, talked them out, i said not, i told him, i told her, i told them,
        waiting for the storm, storm to pass, came down from the roof, came off the roof, i not bypass, i not bridge,
        i not jumper, i not vent, we not bypass, we not bridge, we not vent, i did not vent, we did not vent,
        i did not bypass, i did not bridge, i did not jumper, we did not bypass, we did not bridge, i not put in the,
        i not put in a, took his jumper out, took the jumper out, took the bridge out
        """);

    /// <summary>Questions of how to stay safe, and whether something is a danger.</summary>
    private static readonly WordPattern Questions = new("""
        stay safe, staying safe, keep safe, is it safe to have, is it safe for, safe for kids, safe for children,
        make us ill, make me ill, make you ill, harmful to, call a professional, call in a professional, need a harness,
        need goggles, need gloves, which gloves, which glasses, what ppe, which ppe, how long should i wait,
        how long must i wait, how long do i wait, how long to wait, safety checks, safety rules before, as risky as,
        as dangerous as, how risky is, how dangerous is, right size of breaker, correct size of breaker
        """);

    /// <summary>Those with which a message begins that asks for nothing dangerous, whatever else it names.</summary>
    private static readonly WordPattern Openings = new("""
        how do i stay safe, how do we stay safe, is it safe to have the kids, is it safe to have kids,
        do i need a harness, do we need a harness, how long should i wait for the, how long must i wait for the,
        how long do i wait for the, should i call someone, should i call somebody, should i call an electrician,
        who is allowed to, who may open, why should you not, why should not i, why should i not, where can i get,
        where do i get, how long must i wait after, how long do i wait after, should i open all the windows,
        should i open the windows, should we open the windows, should i turn it off, should i switch it off,
        should i shut it off, should i shut it down, why must i not, why must we not, why is _ not used,
        why is _ not allowed, why is _ forbidden, why is _ banned, why is _ dangerous, why is _ illegal
        """);

    /// <summary>What asks or orders, so that a safe way named beside it clears nothing.</summary>
    private static readonly WordPattern Wanted = new("""
        how do, how to, how can, how could, tell me, show me, talk me, help me, which wire, which wires, which pin,
        where do i, i will, going to, gonna, want to, need to, should i, could i, skip, without, instead
        """);

    private static readonly WordPattern MadeSafe = new("""
        proved dead, proven dead, tested dead, proved it dead, measured dead
        """);

    private static readonly WordPattern Assured = new("sure nobody bridges, sure nobody works, sure nobody puts");

    /// <summary>What shows that the danger is meant all the same.</summary>
    private static readonly WordPattern Meant = new("""
        not trip, not~trip, not cut, not stop, keeps running, keep it running, anyway, can i, quick
        """);

    /// <summary>Openings that ask whether a thing is a danger, and not leave to do it.</summary>
    private static readonly WordPattern Wonders = new("""
        is it dangerous to, how dangerous is it to, is it illegal to, is it against the law to
        """);

    /// <summary>What turns such a question into one for leave.</summary>
    private static readonly WordPattern ForLeave = new("""
        just, only, tonight, until, a day, 1 day, a week, weekend, if i, for now, while, an hour, overnight, this once,
        once, for a, ok, or can, mine, my, this
        """);

    /// <summary>
    /// Whether a message tells that a unit was made safe to work on: "locked off and proved dead, what next".
    /// </summary>
    public static bool TellsOfSafety(RequestWords request) => MadeSafe.IsIn(request) && !Meant.IsIn(request);

    /// <summary>Whether a message asks how a danger is kept away, or why it is one, or tells that it was.</summary>
    /// <param name="isDangerous">
    /// A rule of dangerous requests fits it: then only what can mean nothing else counts.
    /// </param>
    public static bool Is(RequestWords request, bool isDangerous) =>
        Assured.IsIn(request)
            || (!IsMeant(request)
                && (Preventing.IsIn(request) || AsksWhether(request) || IsKept(request) || Opens(request)
                    || (!isDangerous && Questions.IsIn(request))));

    /// <summary>Whether a message asks how to stay safe, and for nothing else.</summary>
    public static bool Asks(RequestWords request, bool isDangerous) =>
        !IsMeant(request) && (Opens(request) || (!isDangerous && Questions.IsIn(request)));

    // The words of an opening mean nothing beside it: "where can i get".
    private static bool IsMeant(RequestWords request)
    {
        var begun = Openings.In(request).Where(opening => opening.First == 0).Select(opening => opening.Last)
            .DefaultIfEmpty(-1).Max();
        return Meant.In(request).Any(meant => meant.First > begun);
    }

    private static bool Opens(RequestWords request) => Openings.In(request).Any(opening => opening.First == 0);

    private static bool AsksWhether(RequestWords request) =>
        Wonders.In(request).Any(opening => opening.First == 0) && !ForLeave.IsIn(request);

    private static bool IsKept(RequestWords request) =>
        Kept.IsIn(request) && !request.EndsAsQuestion && !Wanted.IsIn(request);
}
