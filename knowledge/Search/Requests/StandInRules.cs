using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>
/// Requests to put something else where only the right thing is safe: in a fuse holder, in the circuit, for a sensor or
/// a pump.
/// </summary>
/// <remarks>Common practice, no source.</remarks>
internal static class StandInRules
{
    private static readonly WordPattern Metal = new("""
        nickel, penny, coin, dime, quarter, copper, strand, strand of copper, strand of wire, nail, foil, tinfoil,
        bit of wire, piece of wire, wire, bolt, screw, key, paper clip, paperclip, staple, solder, washer, hairpin, pin,
        gum wrapper, allen key
        """);

    private static readonly WordPattern Gases = new("""
        r454b, 454b, r32, r410a, r410, 410a, 410, r22, r134a, 134a, r404a, 404a, r407c, 407c, 407, r290, r290a, r600a,
        r1234yf, 1234yf, r448a, r449a, r427a, propane, butane, lpg, hydrocarbon, freon 12, r12, car ac stuff,
        car ac gas, car ac, car gas, auto ac, camping gas, lighter gas
        """);

    private static readonly WordPattern Sensors = new("""
        sensor, =sensor, probe, discharge probe, coil probe, thermistor, sensors, probes, feedback, board, controller
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new("oversize-fuse", Metal, new("""
            fuse clip, fuse clips, fuse holder, fuseholder, fuse carrier, fuse slot, fuse socket, in the fuse,
            across the fuse, over the fuse, instead of fuse, instead of the fuse, instead of a fuse,
            in place of the fuse, for a fuse
            """))
        {
            Reach = 5, IsOutright = true, Unless = new(ToldWords.Told + ", between, loose, fuse wire from, =melt"),
        },
        new("oversize-fuse", new("""
            blows, blow, blowing, keeps blowing, pops, popping, trips, tripping, keeps popping, blown, melts
            """),
            new("""
                # here, # in the van, # on the van, # in my, got a #, have a #, i a #, put a #, put #, use a #, use #,
                fit a #, fit #, bigger, larger, next size, next one up, higher rated
                """))
        {
            Reach = 8, ObjectFollows = true, OnlyIfMeant = true, Also = new("""
                fuse, fuses, amp, amps, breaker, mcb, =breaker
                """),
            Unless = new("""
                new one, blew again, same rating, same size, same again, put a new, right one, psi, bar, degrees,
                minutes, times, meter, he, they
                """),
            IsOutright = true,
        },
        new("mix-refrigerants", new("""
            put, drop, top, charge, fill, squirt, add, use, pour, shoot, throw, run, pump, convert, swap, retrofit,
            give it, inject, weigh in, change over, dump
            """), Gases)
        {
            Reach = 5, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                into this, into the, into a, into an, into it, in this 410, in a 410, in an r410a, in the r410a,
                in my r410a, in this r410a, in my r32, in this r32, in an r32, in the mini split, in a mini split,
                in the minisplit, into mini, in a split, in my split, on top of, r410a unit, r410a machine,
                r410a system, 410 unit, 410 machine, 410 system, r32 unit, r32 system, r32 machine, r22 unit,
                r22 system, instead, in place of
                """),
            And = new("""
                r454b, 454b, r22, r134a, 134a, r404a, 404a, r407c, 407c, 407, r290, r600a, r1234yf, 1234yf, propane,
                butane, lpg, hydrocarbon, r12, car ac stuff, car ac gas, car ac, car gas, auto ac, camping gas,
                lighter gas, r448a, r449a, instead, in place of, into this 410, into the 410, into a 410,
                into this r410a, into an r410a, into the r410a, into an r32, into this r32
                """),
            Unless = new(ToldWords.Told
                + ", label says, nameplate says, not use, not put, should not, same refrigerant, old unit, recovered"),
        },
        new("top-up-leak", new("""
            car ac stuff, car ac can, car ac gas, car aircon gas, can of car ac, can of ac gas, auto ac can,
            recharge can, recharge kit, diy recharge, car recharge
            """),
            new("""
                put, use, into, in the minisplit, in the mini split, in a mini, in my, fill, top, add, will it work, ok
                """)) { Reach = 7, IsOutright = true, Unless = new(ToldWords.Told) },
        new("defeat-protection", new("""
            resistor, ohm, ohms, resistance, pot, potentiometer, dummy plug, dummy, fixed value, decade box,
            resistor value
            """),
            new("""
                look cold, look hot, look warm, look fine, looks cold, looks hot, looks warm, looks fine, look normal,
                looks normal, look ok, looks ok, think, thinks, believe, mimic, mimics, simulate, simulates, imitate,
                pretend, fools, fool, fake, fakes, instead of the, in place of the, where the
                """))
        {
            Reach = 9, OnlyIfMeant = true, IsOutright = true, Also = new("""
                sensor, =sensor, probe, thermistor, float, board, controller, switch, detector, coil, discharge
                """),
            Unless = new(ToldWords.Told
                + ", do you think, i think, think the, think it is, to test, for a test, should it read, what should"),
        },
        new("defeat-protection", new("""
            not comes in, not come in, not trips, not trip, not cuts, not cut, not kicks in, not kick in, not acts,
            not act, not triggers, not trigger, not stops, not shuts, not shut, not goes off, not go off, not react,
            not reacts, not interfere, stops tripping, stop tripping
            """),
            new("""
                high temp, high temp trip, trip, cutout, cut out, limit, protection, safety, safeties, pressure switch,
                =pressure, overload, =overload, float, alarm, sensor, detector, interlock
                """))
        {
            Reach = 9, OnlyIfMeant = true, Also = new("""
                setting, settings, tweak, adjust, so that, so it, so the, so they, make it, make the, menu, parameter,
                dip, way to, trick, how can i set, screw on, dial
                """),
            Unless = new(ToldWords.Told + ", why not, find out, right setting, correct setting, does not trip when"),
        },
        new("vent-refrigerant", new("""
            compressor, old compressor, fridge compressor, spare compressor, air compressor, shop vac, vacuum cleaner,
            vacuum cleaner, hand pump, water pump
            """),
            new("""
                as a vac, to pull a vac, to pull a vacuum, to pull vacuum, to vac, to evacuate, for the vac, for vac,
                for a vac, for vacuum, for the vacuum, instead of a vac, instead of vac, instead of the vacuum pump,
                instead of a pump, instead
                """))
        {
            Reach = 6, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Also = new("""
                vac, vacuum, evacuate, evacuation, vac pump
                """), Unless = new(ToldWords.Told + ", clean, dust, drain, filter, water, should not"),
        },
        new("silence-leak-alarm", new("""
            stuff, put, cover, wrap, tape, bag, muffle, smother, plug, block, hang, stick, shove, throw, drop, bury
            """),
            new("""
                in the alarm, over the alarm, on the alarm, around the alarm, the alarm, the leak alarm, the detector,
                over the detector, on the detector, the sniffer, the siren, the beeper, the buzzer, the leak sensor,
                the gas sensor, over the sensor, in the siren, gas alarm, leak alarm, leak detector, gas detector
                """))
        {
            Reach = 5, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                sock, socks, rag, rags, cloth, towel, bag, plastic bag, cling film, tape, foam, pillow, blanket, cup,
                jar, glove, paper, cardboard, tissue, cotton, sponge, muffle, smother, cover, wrap, bucket
                """),
            Unless = new(ToldWords.Told + ", not cover, should not, do not"),
        },
        new("break-ice-off", new("""
            blow lamp, blowlamp, blow torch, blowtorch, heat gun, torch, paint stripper, flame gun, weed burner,
            roofing torch, gas torch
            """),
            new("""
                outdoor coil, indoor coil, the coil, coil, ice, frost, fins, outdoor unit, frozen, condenser,
                evaporator
                """))
        {
            Reach = 5, OnlyIfMeant = true, IsOutright = true,
            Unless = new(ToldWords.Told
                + ", torch light, flashlight, shine, shone, shining, see, look, looked, inspect, recovered, nitrogen, "
                + "empty, braze, brazing, not use, should not"),
        },
    ];
}
