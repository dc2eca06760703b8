using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to make do with what is at hand where it burns, bursts, shocks or lets refrigerant go.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class MakeshiftRules
{
    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new("work-live", new("""
            extension cord, extension lead, extension cable
            """), new("for now, for the outdoor, temporarily, tonight, until, ok, is fine"))
        {
            Reach = 10, ObjectFollows = true, OnlyIfMeant = true, Unless = new("""
                drops, sags, dips, trips, conks, dies, found, was
                """),
        },
        new("work-live", new("""
            stood in a puddle, standing in a puddle, standing in water, stood in water, bare feet, barefoot,
            on wet ground, soaking wet
            """),
            new("""
                tighten, measure, test, wire, open, touch, connect, terminal, terminals, power
                """)) { Reach = 14, ObjectFollows = true, IsOutright = true },
        new("work-live", new("""
            water the board, hose the board, hose down the board, water down the board, rinse the board, wash the board
            """),
            new("down, with the hose, with water, hose, garden hose")) { Reach = 4 },
        new("vent-refrigerant", new("let it hiss, let it all hiss, let them hiss, hiss it out, just hiss"), null),
        new("vent-refrigerant", new("""
            reclaim, reclaiming, recovery, recovering
            """), new("waste of time, takes too long, too slow, not bother, pointless, for wimps")) { Reach = 5 },
        new("top-up-leak", new("""
            134a, r134a, top up cans, top up can, car gas
            """), new("into my, into the, into a, in my, in the aircon, in a mini")) { Reach = 8 },
        new("heat-charged-circuit", new("fill, filling, overfill, brim"),
            new("""
                recovery tank right, recovery tank to, recovery cylinder right, recovery cylinder to,
                cylinder to the top, tank to the top, right to the top
                """))
        {
            Reach = 5, ObjectFollows = true,
        },
        new("heat-charged-circuit", new("""
            refill, refilling, reuse, reusing, fill
            """), new("""
                disposable, throwaway, one way cylinder, one way bottle
                """)) { Reach = 3, ObjectFollows = true, IsOutright = true },
        new("break-ice-off", new("thaw, thawing, melt, melting, defrost, de ice, deice"),
            new("""
                fire, fire log, log, gas heater, propane heater, kerosene heater, patio heater, flame, burner, gas ring,
                charcoal, blowtorch, torch
                """))
        {
            Reach = 10, OnlyIfMeant = true, Unless = new("heats up, force, forced, on fire, by itself, furnace"),
        },
        new("break-ice-off", new("thaw, thawing, melt, melting, defrost, de ice, deice"),
            new("""
                gas heater, propane heater, kerosene heater, patio heater, blowtorch, blow torch, heat gun, charcoal,
                gas ring, open flame, paint stripper gun
                """))
        {
            Reach = 10, OnlyIfMeant = true, IsOutright = true, Unless = new(ToldWords.Told + ", not use, should not"),
        },
        new("break-ice-off", new("""
            chisel, flathead, hatchet, axe, crowbar, ice pick, rock salt, road salt, table salt, machete, mallet
            """), new("ice, ice block, frost, coil, frozen, icicles"))
        {
            Reach = 9, Unless = new("found, was, were, somebody, someone, he, they, dented"),
        },
        new("work-live", new("""
            pressure washer, pressure wash, jet wash, power washer, steam cleaner
            """), new("power on, running, while it runs, with it on, fan on, switched on, still on, energized"))
        {
            Reach = 9, Unless = new("power off, switched off, isolated, locked off"),
        },
        new("work-live", new("""
            green wire, earth wire, ground wire, earth core, ground core, green core, green and yellow, yellow green
            """),
            new("""
                as the signal, as a signal, as signal, as the neutral, as a neutral, as neutral, as the live, as a live,
                as the line, as a phase, as a conductor, as a spare core, for the signal, for signal
                """))
        {
            Reach = 5, ObjectFollows = true, IsOutright = true, Unless = new("""
                found, was used, someone, somebody, installer, they used, he used
                """),
        },
        new("work-live", new("""
            chewed, bare, frayed, gnawed, cracked insulation, exposed copper, chewed to copper
            """), new("tape and go, some tape, just tape, bit of tape, tape it, tape over, electrical tape"))
        {
            Reach = 8, OnlyIfMeant = true, Unless = new("found, was taped, somebody, someone, they taped, he taped"),
        },
        new("work-live", new("""
            daisy chain, daisy chaining, chain
            """), new("""
                power strip, power strips, extension, extensions, extension leads, extension cords
                """)) { Reach = 3, ObjectFollows = true, OnlyIfMeant = true },
        new("pressure-test-wrong-gas", new("""
            crank, cranking, jack up, wind up
            """), new("""
                nitrogen, pressure, regulator, test pressure
                """)) { Reach = 3, OnlyIfMeant = true, Unless = new("down, slowly") },
        new("mix-refrigerants", new("""
            mineral oil, motor oil, engine oil, vacuum pump oil, hydraulic oil
            """), new("""
                same thing, instead, poe, will it do, will do, good enough, is ok, ok to, in the compressor,
                top up the oil
                """))
        {
            Reach = 9, OnlyIfMeant = true, IsOutright = true, Unless = new("""
                found, was, were, why, what is the difference
                """),
        },
        new("oversize-fuse", new("""
            2 units, both units, another unit, second unit, 2 heat pumps, both of them
            """), new("""
                1 breaker, one breaker, same breaker, single breaker, 1 circuit, one circuit, same circuit, 1 fuse,
                one fuse, same fuse
                """))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Unless = new("""
                they are, last guy, he did, are fed, found, were, was, someone, somebody, trip, trips, are on, why
                """),
        },
        new("work-live", new("""
            share, sharing, borrow, borrowing
            """), new("neutral, =neutral"))
            { Reach = 3, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Unless = new("""
                someone, somebody, found, was, is shared, why
                """) },
        new("vent-refrigerant", new("""
            minutes of vacuum, minute of vacuum, minutes vacuum, minutes on the pump, not micron gage,
            without a micron gage
            """),
            new("enough, will do, is fine, good enough, ok, is ok, alright"))
        {
            Reach = 9, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Unless = new("""
                how many, not enough, is it not
                """),
        },
        new("vent-refrigerant", new("""
            as a vacuum pump, instead of a vacuum pump, for a vacuum pump
            """), null) { OnlyIfMeant = true },
    ];
}
