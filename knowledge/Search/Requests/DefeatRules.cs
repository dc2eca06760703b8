using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to defeat a protection.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class DefeatRules
{
    private const string Page = "defeat-protection";

    private static readonly WordPattern Protections = new("""
        switch, switches, =switch, cutout, cut out, overload, =overload, safety, safeties, protection, protections,
        protector, fuse, breaker, =breaker, interlock, limit, limits, guard, alarm, float, contactor, overload button, dome button, lockout,
        lock out, detector, thermal, thermostat, trip, hps, lps, pressurestat, gfci, rcd, relay, sensor, =sensor,
        control, controls, stat, hp, lp, high pressure, low pressure, wires, fault, error, code
        """);

    private static readonly WordPattern HeldParts = new("""
                contactor, relay, float, =float, interlock, door switch, overload, =overload, switch, plunger, limit
                """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("""
                bypass, bypassing, bypassed, defeat, defeating, override, overriding, circumvent, disable, disabling,
                cheat, cheating, trick, fool, wire around, work around, get around, getting around, go around,
                loop out, link out, bridge out, jump out, jumper out, jumping out, jumpering, knock out, eliminate,
                delete, skip, skipping, deactivate, neutralize, beat, spoof, take out of circuit
                """), Protections)
        {
            Reach = 8,
            Unless = new("""
                bypass factor, bypass valve, valve bypass, valve bypassing, gas bypass, bypass line, bypass damper,
                bypassing hot, bypasses, bypassing gas, bypass gas, bypass internally, bypassing internally
                """),
        },
        new(Page, new("""
            can i bypass, can we bypass, could i bypass, how do i bypass, how do we bypass, how to bypass,
            how can i bypass, want to bypass, need to bypass, going to bypass, gonna bypass
            """), null)
        {
            Unless = new("bypass factor, bypass valve, bypass line, bypass damper, bypass duct"),
        },
        new(Page, new("""
            paperclip, paper clip, hairpin, hair pin, coat hanger
            """), Protections) { Reach = 12, Also = new("""
                across, instead of, where would, where does, out of the picture, out of the loop
                """) },
        new(Page, new("""
                bypass it, bypass that, bypass this, bypass the, jumper it, jump it, jump it out, jumper it out,
                defeat it, override it, bridge it, loop it, link it, cheat it, short it
                """), null)
        {
            OnlyIfMeant = true,
        },
        new(Page, new("""
                jumper the, jumper out, jumper across, jumper around, jumper that, jumper this, jumper a, jumper my,
                jumper both, to jumper, i jumper, just jumper, and jumper, can jumper, jumper =high, jumper =low,
                jumper =float, jumper hps, jumper lps, jumper high, jumper low, jumper pressure, jumper float,
                jumper over, jump the, jump out, jump across, jump that, jump this, jump a, jump my, jump around,
                to jump, i jump, just jump, and jump, jump high, jump low, jump float, jumping the, jumping out,
                bridge the, bridge out, bridge across, bridge that, bridge this, bridge over, bridge a, to bridge,
                i bridge, just bridge, bridging, bridge high, bridge low, bridge float, loop the, looping, to loop,
                link the, linking, to link, strap out, strap the, strap on, strap across, a strap, short the,
                short across, short that, to short, just short, shorting out, short out the, short out that, link out,
                loop out, strap out
                """), Protections)
        {
            Reach = 8,
            ObjectFollows = true,
        },
        new(Page, new("""
                tape, taping, wedge, wedging, hold, holding, pin, prop, force, forcing, tie, tying, zip tie, glue,
                stick, push, pushing, press, jam, clamp, weld, block, rubber band, lock
                """), HeldParts)
        {
            ObjectFollows = true, OnlyIfMeant = true, Unless = new("""
                low press, high press, lo press, hi press, press switch, press cutout
                """),
        },
        new(Page, new("""
                hotwire, hot wire, hot wiring, hotwiring, direct wire, wire directly, directly wire,
                feed the compressor, compressor directly, straight to mains, straight off the mains, direct to mains,
                across the line, run the compressor directly, run the compressor straight, directly to mains,
                directly to the mains, bypass inverter, bypass the inverter
                """), null),
        new(Page, new("""
                trick, fool, spoof, deceive, tricking, fooling
                """), new("""
                board, unit, system, it, controller, thinking, computer, =board, inverter
                """))
        {
            ObjectFollows = true, Unless = new("tricky, trick is"),
        },
        new(Page, new("""
                run, running, operate, operating, leave, keep, start, using, use
                """), new("""
                disconnected, unplugged, jumped, jumpered, bypassed, removed, disabled, defeated, bridged, taped,
                linked, looped, shorted out, jumped out, taken out, out of the circuit
                """))
        {
            ObjectFollows = true, Reach = 10, Also = Protections, OnlyIfMeant = true,
        },
        new(Page, new("""
                with a wire, with wire, using a wire, with a piece of wire, with a jumper, with a jumper wire,
                with a paper clip, with a screwdriver, with foil, with tape, with a zip tie, with a resistor
                """),
            new("""
                switch, =switch, float, fuse, overload, =overload, safety, contactor, relay, cutout, interlock,
                breaker
                """))
        {
            Reach = 7, OnlyIfMeant = true,
        },
        new(Page, new("""
                neutral as ground, neutral as earth, neutral for ground, neutral as the ground, without ground wire,
                without a ground, leave out the ground, leave the ground, skip the ground, skip the earth,
                no need for ground, take the ground off, take the earth off, ground off, without earth
                """), null) { OnlyIfMeant = true, Unless = new("""
                someone, somebody, installer
                """) },
        new(Page, new("""
                20 amp, 25 amp, 30 amp, 35 amp, 40 amp, 45 amp, 50 amp, 60 amp, 20 amps, 25 amps, 30 amps, 40 amps,
                50 amps, 20a, 25a, 30a, 40a
                """), new("""
                breaker, =breaker, fuse
                """))
        {
            OnlyIfMeant = true, Also = new("""
                so it, instead, on the 15, on a 15, on the 20, on a 20, not trip, not~trip, in place, holds, hold,
                swap, replace, upgrade, put in, not blow, stop
                """),
        },
        new(Page, new("""
                tape the, tape down, hold in, hold the contactor, push in the contactor, push the contactor, tie down,
                wedge the, manually close the, force the contactor, hold the relay, manually engage
                """), HeldParts),
        new(Page, new("""
                bigger, larger, higher, heavier, oversized, oversize, stronger, upsize, foil, tinfoil, penny, coin,
                nail, paper clip, paperclip, piece of wire, screw, bolt, gum wrapper, copper wire, slug
                """),
            new("fuse, fuses, =fuse, breaker, =breaker, amp, amps"))
        {
            Unless = new("fuse holder screw, loose screw"), OnlyIfMeant = false,
        },
        new(Page, new("""
                instead of, in place of, for a
                """), new("""
                fuse, breaker, amp, amps
                """)) { OnlyIfMeant = true, Unless = new("""
                instead of 220, instead of 230, instead of 240
                """) },
        new(Page, new("""
                put a, put an, use a, use an, stick a, clip a, run a, place a, connect a, hook a, put some, put foil,
                use foil, put my, with a, put tinfoil
                """),
            new("""
                across, between the 2, over the switch, in the switch, in place of, on the hps, on the lps,
                on the float, on the switch, on the high, on the low
                """))
        {
            ObjectFollows = true, Reach = 5, Also = new("""
                wire, clip, jumper, foil, screwdriver, coin, lead, cable, paperclip, nail, resistor, switch, float,
                alligator
                """), OnlyIfMeant = true,
            Unless = new("meter, ohmmeter, multimeter, drop across, volts across"),
        },
        new(Page, new("""
                wires together, leads together, 2 wires, both wires, the wires, which wires, wires of the, the leads,
                2 leads, both leads
                """), new("""
                tie, twist, join, connect, splice, nut, hook
                """))
        {
            OnlyIfMeant = true, Reach = 6, Also = new("""
                together, switch, float, =switch, safety, overload
                """), Unless = new("""
                wires crossed, mixed up, between the units
                """),
        },
        new(Page, new("""
                run without, run it without, running without, running it without, operate without, operate it without,
                start it without, run the unit without, run the compressor without, use it without, leave it without,
                work without, run with no, run it with no, run it not, run the unit not, without
                """), new("""
                overload, =overload, switch, =switch, safety, safeties, protection, float, guard, fuse, breaker,
                =breaker, ground, earth, high pressure switch, cover, interlock, sensor, thermal, cutout, rcd, gfci,
                leak detector
                """))
        {
            ObjectFollows = true, Reach = 5, OnlyIfMeant = true,
        },
        new(Page, new("""
                cut, remove, removing, disconnect, lift, clip, snip, unhook, take off, leave off, pull off,
                disconnecting, cutting, cut off, isolate, unplug, yank, rip out, pull out, take out, get rid of,
                swap out
                """),
            new("""
                ground wire, the ground, earth wire, the earth, grounding, guard, fan guard, protective conductor,
                grille, interlock, overload, safety, safeties, pressure switch, float, rcd, gfci, safety switch,
                leak sensor, leak detector
                """))
        {
            ObjectFollows = true, OnlyIfMeant = true, Reach = 4, Unless = new("see if, to check, to test"),
        },
        new(Page, new("""
                dummy resistor, fixed resistor, with a resistor, a resistor, put a resistor, use a resistor
                """), null) { OnlyIfMeant = true, Unless = new("""
                inrush, soft start, precharge, measured
                """) },
        new(Page, new("""
                ignore, silence, unplug, disable, mute
                """), new("""
                leak alarm, leak detector, gas alarm, leak sensor, gas detector, refrigerant alarm,
                refrigerant detector
                """)),
        new(Page, new("""
                keep resetting, reset it over and over, keep flipping, resetting the breaker over, keep hitting
                """), new("""
                breaker, =breaker, reset, lockout
                """)) { OnlyIfMeant = false },
        new(Page, new("""
                fuse with #, fuse with a #, breaker with #, breaker with a #, fuse for a #, breaker for a #,
                fuse to a #, breaker to a #, fuse by a #, as a fuse, as the fuse, instead of a fuse,
                instead of the fuse, behind the fuse, around the fuse, across the fuse, double the breaker,
                double the fuse, size up the breaker, up a size, next size breaker, next size fuse,
                breaker one size up
                """), null)
        {
            OnlyIfMeant = true,
        },
        new(Page, new("""
                leave it off, leave it out, leave it disconnected, leave off, cut it, remove it, skip it, snip it
                """), new("""
                ground, earth, ground wire
                """)) { Reach = 10, OnlyIfMeant = true },
        new(Page, new("""
                gfci, rcd, gfi, rcbo, ground fault
                """), new("""
                normal, regular, standard, ordinary, plain, non gfci
                """)) { Reach = 6, OnlyIfMeant = true, Also = new("""
                swap, replace, change, install, use, put
                """) },
        new(Page, new("""
                guard off, guards off, grille off, guard removed, without guard, without the guard,
                without the grille, cover removed
                """), new("""
                run, running, start, operate, leave
                """)) { Reach = 6, OnlyIfMeant = true },
        new(Page, new("""
                so it runs, so it stays, so it keeps, so it works, so it stops, so it does not, so it not, so that it,
                to keep it running, so the unit runs, so it will run, so it goes, so it thinks, so it cools,
                so it heats, so she runs
                """), Protections)
        {
            Reach = 14, OnlyIfMeant = true, Also = new("""
                put, make, rig, tie, set, leave, close, keep, get, push, wire, connect, disconnect, pull, cut, take,
                remove, unplug, twist, turn, join, splice, hold, lock, prop, move, fix it
                """),
        },
        new(Page, new("""
                ignore, ignores, ignoring
                """), new("""
                float, =float, pressure switch, =switch, safety, safeties, overload, lockout, protection, cutout,
                leak, alarm, detector
                """))
        {
            Reach = 5, OnlyIfMeant = true, ObjectFollows = true,
        },
        new(Page, new("""
                under the float, below the float, on the float, over the float, to the float
                """), new("""
                put, place, tape, stick, glue, wedge, zip, jam
                """)) { Reach = 5, OnlyIfMeant = true },
        new(Page, new("""
                resistor instead, instead of thermistor, instead of the thermistor, instead of the sensor,
                instead of a sensor, fake the, fake a, faking the, fake sensor
                """), new("""
                sensor, =sensor, thermistor, probe, reading, signal, resistor
                """))
        {
            OnlyIfMeant = true, Reach = 6, Also = new("resistor, fake, faking, wire, jumper"),
        },
        new(Page, new("""
                higher than, turn up, turn down, screw down, screw in, adjust, adjustment, raise, set higher,
                set it higher, readjust
                """),
            new("""
                pressure switch, cutout, pressure limit, high limit, overload, safety, =switch
                """))
        {
            OnlyIfMeant = true, Reach = 6, Also = new("""
                trip, not~trip, allowed, higher, stays, stops, tripping, never
                """),
        },
        new(Page, new("""
                keep resetting, resetting it until, reset it until, reset until, keep pushing reset, keep flipping,
                over and over
                """), new("""
                pressure, overload, breaker, =breaker, lockout, safety, switch, reset, protection, trips, trip
                """))
        {
            Reach = 8, OnlyIfMeant = true,
        },
        new(Page, new("""
                force it to run, force it to, make it run, get it to run, keep it running, force run,
                force the compressor, run anyway, run it anyway
                """), new("""
                lockout, lock out, alarm, leak detector, ignoring, tripped, float, safety, protection,
                pressure switch, with the switch, trip
                """))
        {
            OnlyIfMeant = true, Reach = 8,
        },
        new(Page, new("""
                gas detector, leak detector, gas alarm, leak alarm, refrigerant sensor, leak sensor, smoke alarm,
                smoke detector
                """), new("""
                run, running, ignoring, ignore, keep, turn off, disable, cover, unplug, silence, mute, disconnect
                """)) { OnlyIfMeant = true, Reach = 8 },
        new(Page, new("""
                bypass, bypassing, defeat, override, jumper out, jumper it out, jump out, jump it out, bypass safety
                """), null) { MostWords = 3, OnlyIfMeant = true },
    ];
}
