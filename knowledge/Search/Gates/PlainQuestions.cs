using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Questions for knowledge or favors, which complain of nothing: "what torque for a flare nut", "how do I set the
/// timer".
/// </summary>
internal static class PlainQuestions
{
    /// <summary>Longer messages tell a story.</summary>
    private const int MostWords = 16;

    private static readonly WordPattern Openings = new("""
        what, whats, which, how to, how do, how does, how deep, how long, how far, how high, how much, how many,
        how often, how big, how tight, hows, how can, where, wheres, when do, when will, when is my, who, whos, do you,
        are you, can you, can i, can we, do i, do we, is there, is this, explain, define, is it going, will it,
        could you, could someone, can someone, may i, minimum, maximum, recommended, typical, usual, difference between,
        best setting, best way, best place, any deals, any chance of a, is warranty, is the warranty, does the warranty
        """);

    /// <summary>
    /// Openings that ask for a figure or for how things are: what would be a trouble elsewhere is the matter asked
    /// about.
    /// </summary>
    private static readonly WordPattern ForKnowledge = new("""
        which cable size, which cable for, which size, which breaker size, which pipe size, what size, what cable size,
        what breaker, what is the difference, whats the difference, difference between, minimum, maximum, recommended,
        typical, best setting, best way, best place, how high, how far, how deep, how long is, how long are,
        how long does delivery, how does a heatpump, how do heatpumps, how does a split, why did they, does dry mode,
        is it cheaper to, is it better to, is it worth, are heatpumps
        """);

    /// <summary>
    /// Openings that ask why things are as they are, where no trouble follows: "why do they flare the pipes", "why have
    /// heat pumps two valves".
    /// </summary>
    private static readonly WordPattern Reasons = new("why has the, why have, why do they, why do most, why does a");

    /// <summary>Words of the search for a cause.</summary>
    private static readonly WordPattern Causes = new("""
        why, how come, cause, causes, causing, make, makes, making, mean, means, meaning
        """);

    /// <summary>Words of a trouble.</summary>
    private static readonly WordPattern Troubles = new("""
        wrong, trip, trips, tripping, tripped, stop, stops, stopped, stopping, hum, hums, humming, drip, drips,
        dripping, leak, leaks, leaking, blink, blinks, blinking, flash, flashes, flashing, noise, noisy, dead, smell,
        smells, ice, iced, icing, frost, frosting, water, warm, cold, hot, error, fault, code, dies, died, quit, quits,
        problem, trouble, keeps, keep, reset, resets, burns, burnt, buzz, buzzing, rattle, rattling, click, clicking,
        freeze, freezes, freezing, off by itself, blow, blows, blown, blew, fail, fails, failed, failing, broke, broken,
        gone out, went out, gone off, went off
        """);

    /// <summary>Words of a trouble that no question for knowledge has.</summary>
    private static readonly WordPattern Errors = new("""
        error, fault, code, mean, means, keeps, trip, trips, tripping, leak, leaks, leaking, dripping, blinking,
        flashing, noise, smell, problem, trouble, stopped, died, dead
        """);

    /// <summary>Openings that may go on to a trouble: "can you help", "what is up".</summary>
    private static readonly WordPattern Pleas = new("""
        can you help, could you help, can someone help, what is up, whats up, what do i do, what can i do
        """);

    /// <summary>Whether such a question asks for help, so that other words of it decide.</summary>
    public static bool IsPlea(RequestWords request) => IsOpenedBy(Pleas, request);

    public static bool Is(RequestWords request, ImmutableArray<Token> tokens) =>
        request.Count <= MostWords
        && (IsOpenedBy(ForKnowledge, request)
            ? !Errors.IsIn(request) || IsCalm(request, tokens)
            : (IsOpenedBy(Reasons, request) || (IsOpenedBy(Openings, request) && !Causes.IsIn(request)))
                && IsCalm(request, tokens));

    private static bool IsOpenedBy(WordPattern openings, RequestWords request) =>
        openings.In(request).Any(opening => opening.First == 0);

    private static bool IsCalm(RequestWords request, ImmutableArray<Token> tokens) =>
        !Troubles.IsIn(request)
        && !tokens.Any(token => token.IsNegated || (token.Role == TokenRole.Main && States.Ill.Contains(token.Term)));
}
