using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to reach for a fan that turns or may start, with the hand or what is at hand.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class MovingPartRules
{
    private const string Page = "work-live";

    private static readonly WordPattern Fans = new("""
        fan, =fan, fans, blade, blades, fan blade, fan blades, blower, blower wheel, fan wheel, propeller, prop, barrel
        """);

    private static readonly WordPattern Hands = new("""
        my hand, my hands, hand, by hand, bare hand, finger, fingers, my finger, my arm, my glove, my foot, a stick,
        stick, broom, broomstick, broom handle, screwdriver, rag, towel, pencil, pen, piece of wood, bit of wood, plank,
        boot, shoe, pliers, hammer
        """);

    private static readonly WordPattern Powered = new("""
        powered, power on, power still on, power is on, live, running, while it runs, while it is on, while on,
        with it on, energized, switched on, spinning, turning, at full speed, kick start, jump start, get it going,
        get it started, get it moving, give it a start, bump start
        """);

    private const string Safe =
        "power off, switched off, turned off, isolated, locked off, locked out, when i, if i, unless, only when, only "
            + "if, only starts, starts when, needs a, need a, had to, have to, turns freely, tight, seized";

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("""
            stop the, stopping the, slow the, slow down the, brake the, catch the, grab the, hold back the, halt the
            """), Fans)
        {
            Reach = 3, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Also = Hands,
            Unless = new(ToldWords.Told + ", " + Safe),
        },
        new(Page, new("""
            spin, spin up, turn, push, flick, kick, nudge, poke, rotate, help, twirl, move, bump, start
            """), Fans)
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Also = Powered,
            Unless = new(ToldWords.Told + ", " + Safe
                + ", not spin, not turn, not move, not start, remote, button, screen, display, speed up, speed, how "
                + "fast, turn off, turn on, turn the unit"),
            And = Hands,
        },
        new(Page, new("""
            clean, cleaning, wipe, wiping, brush, brushing, vacuum, scrub, dust, oil, grease, unjam, free, dislodge,
            pull, pick, tighten, touch, remove
            """), Fans)
        {
            Reach = 5, ObjectFollows = true, OnlyIfMeant = true,
            Also = new("""
                while it runs, while it is running, while running, while it spins, while spinning, while it turns,
                while turning, still spinning, still turning, still running, with the fan on, with it running,
                with it spinning, at full speed, as it spins
                """),
            Unless = new(ToldWords.Told + ", " + Safe),
        },
        new(Page, new("""
            put my hand, put a hand, put your hand, put his hand, put her hand, put my fingers, put my finger,
            stick my hand, stick my fingers, feel, feel with, hold my hand, press my hand
            """),
            new("discharge pipe, discharge line, hot gas pipe, hot pipe, compressor dome, muffler"))
        {
            Reach = 5, ObjectFollows = true, OnlyIfMeant = true, Unless = new(ToldWords.Told + ", warm to the"),
        },
    ];
}
