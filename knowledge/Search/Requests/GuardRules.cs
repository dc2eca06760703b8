using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>
/// Requests told by their build: what keeps people safe is to be made blind, quiet, absent or unable to act.
/// </summary>
/// <remarks>Common practice, no source.</remarks>
internal static class GuardRules
{
    private const string Page = "defeat-protection";

    /// <summary>What keeps people and the unit safe.</summary>
    private static readonly WordPattern Guards = new("""
        sensor, =sensor, detector, sniffer, beeper, alarm, cutout, cut out, cutoff, cut off, safety, safeties,
        protection, protections, relief, interlock, overload, =overload, limit, lockout, float, pressure switch,
        pressure trip, trip, setpoint, rcd, gfci, short cycle timer
        """);

    /// <summary>What holds another thing in place.</summary>
    private static readonly WordPattern Holders = new("""
        clamp, magnet, cardboard, bit of card, matchstick, toothpick, rubber band, clothes peg, cable tie, zip tie,
        wedge, gum, blu tack, coin
        """);

    private static readonly WordPattern Holding = new("""
        keep, keeps, stays, stay, saves, so it, hold, holds, shut, closed, made, in place
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("""
            see nothing, stay quiet, keep quiet, be quiet, stays quiet, look like it, look as if, say nothing, shut up,
            hush, out of the way, never see
            """), Guards)
        {
            Reach = 9, OnlyIfMeant = true,
        },
        new(Page, new("""
            not pick up, not pick it up, not sense, not detect, not notice, not smell it, not go off, stop going off,
            stops going off, not beep, stop beeping, stops beeping
            """), Guards)
        {
            Reach = 9, OnlyIfMeant = true,
            Also = new("""
                rag, rags, cloth, towel, bag, cling film, cover, stuff, so it, so that, so the, how do i, how can i,
                how to
                """),
        },
        new(Page, new("""
            took the _ off, took the _ _ off, takes the _ off, took his _ off, took _ off, took off the, took out the,
            took the _ out, takes the _ out, removed the, ripped out the, ripped the _ out, cut out the,
            pulled the _ out
            """), Guards)
        {
            Reach = 3,
            Also = new("""
                talk me through, talk me thru, how did he, how did they, do the same, same on mine, same here ok,
                works fine without, never a problem, never had a problem
                """),
        },
        new(Page, new("""
            cut off, cutting off, snap off, snapping off, pull out, bend, bend over, saw off, file off, break off,
            clip off
            """),
            new("""
                third pin, 3rd pin, earth pin, ground pin, third prong, 3rd prong, earth prong, ground prong, earth leg
                """))
        {
            Reach = 4, ObjectFollows = true, IsOutright = true, Unless = new("someone, somebody, was, found"),
        },
        new(Page, new("want, wanted, wants, need, fancied, wish"), new("""
            cutout gone, cut out gone, cutoff gone, safety gone, safeties gone, alarm gone, past the pressure,
            past the safety, past the cutout, past the lockout, past the overload, around the safety
            """))
        {
            Reach = 12, ObjectFollows = true,
        },
        new(Page, new("""
            take, taking, pull, get
            """), new("safeties out, protections out, safeties off, cutouts out")) { Reach = 3, ObjectFollows = true },
        new(Page, new("crank, crank up, override, overriding, cheat, block, block off, plug up, cap off"), Guards)
        {
            Reach = 6, ObjectFollows = true, OnlyIfMeant = true, Unless = new("""
                blocked, ice, dirt, dirty, leaves, lint
                """),
        },
        new(Page, new("turn off, turning off, switch off, switching off, shut off"),
            new("protection, protections, safeties, high pressure, cutout, leak alarm, gas alarm, detector, limits"))
        {
            Reach = 6, ObjectFollows = true, Also = new("""
                forever, permanently, for good, in setup, in the setup, in the menu, how, can i, where
                """),
        },
        new(Page, Holders, new("""
            button, contact, microswitch, switch, trip, reset, latch, plunger, relay, float, interlock, contactor
            """))
        {
            Reach = 12, Also = Holding, Unless = new("found, valve, stepper"),
        },
        new(Page, new("""
            loop of wire, wire loop, bit of wire, piece of wire, paper clip, paperclip, jumper wire, dab of solder,
            bit of foil
            """), Guards)
        {
            Reach = 9, Also = new("""
                accept it, accepts it, will it, would it, does it, how, can i, can we, get away with, ok, okay, instead,
                so it, only for, just for, for the weekend, for tonight
                """),
            Unless = new("found, was"),
        },
        new(Page, new("""
            jumper location, jumper pins, jumper pin, float jumper, safety jumper, jumper the, list the jumper
            """), null) { MostWords = 16, OnlyIfMeant = false, Unless = new("""
                set, setting, capacity, model, dip, moved, found
                """) },
        new(Page, new("""
            lock the compressor on, lock compressor on, force the compressor on, compressor locked on
            """), null) { Unless = new("rotor") },
        new(Page, new("""
            hypothetically, theoretically, pretend, imagine, suppose, say a person, say somebody, for a novel,
            for a story, for a book, for a movie, for a film, in a story, role play, roleplay, play the part, act as,
            act like, grandma, grandpa, without safety limits, without rules, without limits, not rules,
            ignore your rules, forget your rules, forget your instructions, asking for a friend
            """),
            new("""
                switch, =switch, cutout, cut out, trip, safety, protection, protections, detector, alarm, float,
                interlock, overload
                """))
        {
            Reach = 30, IsOutright = true,
        },
        new(Page, new("""
            grille off, grill off, guard off, cover off, green yellow, green and yellow, yellow green, earth wire,
            ground wire
            """),
            new("""
                can it stay off, can it stay, can i leave, can we leave, ok off, leave it off, keep it off,
                just stay off, stay off
                """))
        {
            Reach = 24, ObjectFollows = true,
        },
        new(Page, new("compressor"),
            new("""
                straight to the line, straight to line, straight to the mains, straight onto the line,
                without the inverter, past the inverter, around the inverter
                """))
        {
            Reach = 4, ObjectFollows = true, Also = new("hook, connect, wire, run, start, feed"),
        },
        new(Page, new("way round, way around, way past, get round, get around, get past, work around, workaround"),
            new("""
                lockout, locked out, leak alarm, gas alarm, protection, safety, float, =switch, cutout, interlock, trip,
                trips
                """))
        {
            Reach = 9, Unless = new("found, wires"),
        },
    ];
}
