using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>Questions for knowledge or favors, which complain of nothing: "what torque for a flare nut", "how do I set the timer".</summary>
internal static class PlainQuestions
{
    /// <summary>Longer messages tell a story.</summary>
    private const int MostWords = 16;

    private static readonly WordPattern Openings = new("""
        what, whats, which, how to, how do, how does, how deep, how long, how far, how high, how much, how many, how often, how big, how tight,
        hows, how can, where, wheres, when do, when will, when is my, who, whos, do you, are you, can you, can i, can we, do i, do we, is there,
        is this, explain, define, is it going, will it, could you, could someone, can someone, may i
        """);

    /// <summary>Words of a trouble, or of the search for its cause.</summary>
    private static readonly WordPattern Troubles = new("""
        why, how come, cause, causes, causing, make, makes, making, mean, means, meaning, wrong, trip, trips, tripping, tripped, stop, stops, stopped, stopping, hum, hums,
        humming, drip, drips, dripping, leak, leaks, leaking, blink, blinks, blinking, flash, flashes, flashing, noise, noisy, dead, smell, smells,
        ice, iced, icing, frost, frosting, water, warm, cold, hot, error, fault, code, dies, died, quit, quits, problem, trouble, keeps, keep, reset, resets, burns, burnt, buzz, buzzing, rattle, rattling, click, clicking, freeze, freezes, freezing, off by itself
        """);

    public static bool Is(RequestWords request, ImmutableArray<Token> tokens) =>
        request.Count <= MostWords
        && Openings.In(request).Any(opening => opening.First == 0)
        && !Troubles.IsIn(request)
        && !tokens.Any(token => token.IsNegated || (token.Role == TokenRole.Main && States.Ill.Contains(token.Term)));
}
