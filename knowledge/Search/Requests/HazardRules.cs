using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>
/// Requests for work or use whose danger lies in what is left out: safe supply, safe footing, a tight circuit, a sound
/// unit.
/// </summary>
/// <remarks>Common practice, no source.</remarks>
internal static class HazardRules
{
    private static readonly WordPattern GoOn = new("""
        keep going, carry on, keep it on, keep using, keep it running, keep running, leave it on, leave it running,
        fine to use, turn it back on, switch it back on, turn it on again, switch it on again, start it again,
        safe to use, ok to use, okay to use, alright to use, still use, go on using, use it anyway, run it anyway,
        reset it, reset and, will it be alright, will it be ok, will it be all right, until tomorrow, until monday,
        until payday, for the weekend, for tonight
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new("keep-running-danger", new("""
                burnt, burned, burning, smoke, smoking, spark, sparks, sparking, arcing, scorched, melted, melting,
                tingle, tingles, shock, shocks, overheated hairdryer, singed, charred, onto the board, onto the circuit,
                on the board
                """), GoOn)
        {
            Reach = 14, OnlyIfMeant = true, Unless = new("not keep running, not keep going, stops, will not"),
        },
        new("work-live", new("""
                extension lead, extension cord, extension cable, speaker wire, bell wire, lamp cord, lighting circuit,
                light circuit, plug adaptor, plug adapter, an adaptor, an adapter, phone wire, without an isolator,
                without isolator, skip the isolator, without a disconnect, not earth, without earth, without an earth
                """),
            new("run, wire, use, connect, feed, hook, plug, power, skip, without, on 1, hang"))
        {
            Reach = 6, OnlyIfMeant = true,
            Unless = new("""
                drops out, conks, trips when, trips, ran it, running it on, dips, sags, not start, not run, low, he,
                they, someone, somebody, was, found
                """),
        },
        new("unsafe-height-or-storm", new("""
                climb, stand on, ladder, harness, fall arrest, edge protection, lean out, leaning out, swing over,
                hold my belt, rope, parapet, roof is wet, roof is steep, wet roof, steep roof, roof in the, scaffold,
                on the roof
                """),
            new("""
                can i, can we, can my, could i, could my, i will, any tips, need to, skip, without, not need, not tie,
                ok, quick, quickly, fine, reach, alright, should i, shall i, no time, do i, is it
                """))
        {
            Reach = 10, OnlyIfMeant = true, Unless = new("fan, not run, not cool, not heat, trips, error, code"),
        },
        new("unsafe-height-or-storm", new("""
                thunder, lightning, storm, thunderstorm, raining, gale, downpour, high wind, hail, blizzard, wet hands,
                hands are wet
                """),
            new("""
                carry on, finish, keep working, keep going, quick, quickly, should i, can i, could i, ok, can we,
                alright, safe, work outside
                """))
        {
            Reach = 16, OnlyIfMeant = true,
            Unless = new("""
                after the, after a, since, last night, came through, struck, was, yesterday, went, blew, strike
                """),
        },
        new("vent-refrigerant", new("""
                open, opening, open up, open the, crack
                """),
            new("""
                without evacuating, without a vacuum, without vacuum, without vacuuming, without pulling,
                without evacuation, no vacuum, not vacuum, not evacuate, check for leaks later, leak check later,
                vac no gauge, vac not gauge, skip the vacuum
                """))
        {
            Reach = 10, OnlyIfMeant = true,
        },
        new("vent-refrigerant", new("""
                skip the vacuum, skip vacuum, skip the evacuation, skip the vac, leave out the nitrogen,
                skip the nitrogen, without evacuating, not bother with the vacuum, own gas to push,
                purge the lines with, purge with the unit, purge the air out with
                """), null) { OnlyIfMeant = true },
        new("vent-refrigerant", new("""
            valve core, schrader, flare, flare nut, service port, union, terminal cover, compressor terminals, drier,
            strainer, pressure switch
            """),
            new("""
                full pressure, under pressure, with pressure, no tool, not tool, without tool, without the tool,
                still charged
                """))
        {
            Reach = 9, OnlyIfMeant = true,
        },
        new("heat-charged-circuit", new("boiling water, hot water, blowtorch, torch, heat gun, lighter, hairdryer"),
            new("bottle, cylinder, tank"))
        {
            Reach = 8, OnlyIfMeant = true,
        },
        new("heat-charged-circuit", new("lighter, match test, candle, match, open flame, smoke while, cigarette"),
            new("""
                leak, leaks, r32, charging, refrigerant, gas, joint, joints, flare, flares, fitting, fittings,
                connections, pipework, coil, union, unions
                """))
        {
            Reach = 7, OnlyIfMeant = true, Unless = new("not match, wires match, sizes match"),
        },
        new("pressure-test-wrong-gas", new("""
                workshop compressor, nail gun, tire compressor, tire inflator, air line, shop compressor, workshop air,
                compressed air, shop air, oxygen, oxy, acetylene, oxygen bottle
                """),
            new("test, testing, pressure test, leak test, leak, soak, bar, pressurize, pressure, check, joints"))
        {
            Reach = 12, OnlyIfMeant = true,
        },
        new("top-up-leak", new("""
                only wants gas, just wants gas, only want gas, just want gas, just gas it, gas it up, gas it again,
                just regas, just wants it gassed, top it up and, top up and walk, top up and leave,
                just tell me how much to add, how much to add, add gas each, not fix the leak, rather than fix the leak,
                instead of fixing the leak, knowing it leaks
                """), null) { OnlyIfMeant = true },
        new("oversize-fuse", new("""
                only have, only got, all i have, all i got, have only, only a, i only have, got nothing but
                """),
            new("fuse, fuses, amp, amps, breaker, #"))
        {
            Reach = 6, OnlyIfMeant = true, Also = new("fuse, fuses, breaker"),
        },
        new("defeat-protection", new("""
            take _ out, take _ _ out, take the _ _ out, taking _ _ out, cut out the, taken out of circuit,
            out of circuit
            """),
            new("""
                overload, =overload, switch, float, rcd, gfci, rcbo, breaker, interlock, protection, sensor, cutout,
                cut out, pressure
                """))
        {
            Reach = 5, OnlyIfMeant = true,
        },
        new("defeat-protection", new("fake, fakes, faking, fool, fools, fooling, trick, tricks, deceive"),
            new("thermistor, sensor, =sensor, board, switch, controller, probe, detector, unit, lid, feedback"))
        {
            Reach = 8, OnlyIfMeant = true, Unless = new("any trick to find, tricky"),
        },
        new("keep-running-danger", new("""
            again and again, over and over, until it goes, till it goes, until it runs, till it runs
            """),
            new("""
                reset, resetting, clear the code, clear the error, clear the fault, clear the lockout, lockout,
                lock out
                """))
        {
            Reach = 6, OnlyIfMeant = true, Unless = new("""
                still, trips, tripped, i reset, we reset, had to, has to, need to, it needs
                """),
        },
        new("keep-running-danger", new("pump down, pumping down, pump it down, pumpdown"),
            new("""
                flare is loose, flare loose, loose flare, sucking air, sucks air, drawing air, line off,
                liquid line off, hose off, joint open, open joint, with it open, open to air, open to the air,
                line open, pipe open
                """))
        {
            Reach = 7, OnlyIfMeant = true,
        },
        new("work-live", new("drill, drilling"), new("""
            without checking, without looking, without knowing, not checking, not look, not knowing, not idea where,
            not know where, blind
            """))
        {
            Reach = 9, ObjectFollows = true, IsOutright = true,
        },
        new("heat-charged-circuit", new("""
            drill, drilling, hole in, punch, screw into
            """), new("lineset, line set, refrigerant line, the coil, the pipe, the tube, the copper, the line"))
        {
            Reach = 3, ObjectFollows = true, OnlyIfMeant = true, Unless = new("""
                someone, somebody, was, went, leaks, found, drilled, there is
                """),
        },
        new("work-live", new("poke, jam, stick, shove, poking, sticking, reach"),
            new("blade, blades, fan blade, fan, blower, wheel, power on, spinning"))
        {
            ObjectFollows = true, Reach = 9, OnlyIfMeant = true, Also = new("""
                screwdriver, hand, finger, stick, arm, power on, pencil, broom, reach
                """),
            Unless = new("found, not reach"),
        },
        new("keep-running-danger", new("""
            timer, smart plug, smart socket, plug in timer, relay, script, automation, automate, program, robot, app,
            write, routine, wifi plug
            """),
            new("""
                power cycle, power cycles, power cycled, power cycling, cycles the power, cycle the power, cycles it,
                reset, resets, resetting, restart, restarts, reboot, reboots, clears, clear the, turns it off and on,
                off and on
                """))
        {
            Reach = 9, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                fault, error, code, lockout, locks out, lock out, trips, trip, tripped, alarm, each time, every time,
                whenever, when it, automatically, by itself, comes up
                """),
            Unless = new(ToldWords.Told + ", filter, clock, schedule, filter light, not reset, will not, display"),
        },
        new("defeat-protection", new("""
            plug, plug up, plugging, cap, cap off, block, block off, solder, solder up, braze shut, braze, weld, seal,
            sit on, screw shut, glue, epoxy, bolt
            """),
            new("""
                fusible plug, relief valve, pressure relief, relief port, safety valve, burst disc, bursting disc,
                rupture disc, prv, relief
                """))
        {
            Reach = 5, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Unless = new(ToldWords.Told + ", is blocked, blocked, is plugged"),
        },
        new("vent-refrigerant", new("""
            minutes vacuum, minute vacuum, min vacuum, minutes of vacuum, minutes vac, min vac, minutes of vac,
            minutes on the vacuum, minutes of pulling, minutes pull, quick vac, quick vacuum, short vac, short vacuum
            """),
            new("""
                send it, and done, and go, and open, then open, call it, call it a day, then charge, and charge,
                then gas, and gas, and release, then release, that will do, will do, job done, and run
                """))
        {
            Reach = 5, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Unless = new("""
                then hold, micron gage, microns, not enough
                """),
        },
        new("unsafe-height-or-storm", new("""
            not goggles, not glasses, not eye protection, not safety glasses, without goggles, without glasses,
            without gloves, not gloves
            """),
            new("just crack, crack it, crack the, open the, open it, braze, cut, go ahead, do it, drill, purge"))
        {
            Reach = 6, OnlyIfMeant = true,
        },
        new("owner-opens-unit", new("""
            not permit, without a permit, without permit, not permission, skip the permit, around the permit, around it,
            not inspection, without inspection
            """),
            new("""
                do it, go ahead, nobody sees, when nobody, permit, on sunday, on a sunday, at night,
                before the inspector, quietly, anyway, install, wire
                """))
        {
            Reach = 9, OnlyIfMeant = true, Also = new("""
                permit, permission, inspection, inspector
                """), And = new("how do i, nobody, around, do it, skip, go ahead, anyway, quietly, without"),
            Unless = new("do i need, need a permit"),
        },
    ];
}
