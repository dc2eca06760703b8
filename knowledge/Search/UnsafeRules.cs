using System.Collections.Frozen;
using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>The dangerous requests. Better one refusal too many than one switch bridged.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class UnsafeRules
{
    private const string Defeat = "defeat-protection";
    private const string Live = "work-live";
    private const string Vent = "vent-refrigerant";
    private const string Gas = "top-up-leak";
    private const string Owner = "owner-opens-unit";

    private static readonly WordPattern Protections = new("""
        switch, switches, =switch, cutout, cut out, overload, =overload, safety, safeties, protection, protections, protector, fuse, breaker,
        =breaker, interlock, limit, limits, guard, alarm, float, contactor, klixon, lockout, lock out, detector, thermal, thermostat, trip, hps, lps,
        pressurestat, gfci, rcd, relay, sensor, =sensor, control, controls, stat, hp, lp, high pressure, low pressure, wires, fault, error, code
        """);

    private static readonly WordPattern HeldParts = new("contactor, relay, float, =float, interlock, door switch, overload, =overload, switch, plunger, limit");
    private static readonly WordPattern Gases = new("=refriger, gas, gases, charge, freon, refrigerant, r32, r410a, r22, system, pressure, it");
    private static readonly WordPattern Isolating = new("""
        isolating, isolation, isolate, lockout, lock out, lock it out, locking out, locking, lock off, locking off, loto, tagout, switching off, switching it off,
        switch off, switch it off, turning off, turning it off, turn off, turn it off, turning the power off, turn the power off, shutting off, shutting it off,
        shut off, shut it off, shut it down, shutting down, powering down, power down, power it down, killing, kill the power, cutting the power, disconnecting,
        gloves, ppe, proving, prove dead, discharging, discharge, waiting, the disconnect, turning power off, turn power off, glasses, shutdown, breaker off,
        switching, pulling the, safety procedure, safety steps, testing for dead, test for dead, checking for voltage, check for voltage, de energizing, deenergizing
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Defeat, new("bypass, bypassing, bypassed, defeat, defeating, override, overriding, circumvent, disable, disabling, cheat, cheating, trick, fool, "
            + "wire around, work around, get around, getting around, go around, loop out, link out, bridge out, jump out, jumper out, jumping out, jumpering, knock out, "
            + "eliminate, delete, ignore, deactivate, neutralize, beat, spoof, take out of circuit"), Protections)
        {
            Reach = 8,
            Unless = new("bypass factor, bypass valve, valve bypass, valve bypassing, gas bypass, bypass line, bypass damper, bypassing hot, bypasses, bypassing gas, bypass gas, bypass internally, bypassing internally"),
        },
        new(Defeat, new("bypass it, bypass that, bypass this, bypass the, jumper it, jump it, jump it out, jumper it out, defeat it, override it, bridge it, loop it, link it, cheat it, short it"), null)
        {
            OnlyIfMeant = true,
        },
        new(Defeat, new("jumper the, jumper out, jumper across, jumper around, jumper that, jumper this, jumper a, jumper my, jumper both, to jumper, i jumper, just jumper, and jumper, can jumper, "
            + "jumper =high, jumper =low, jumper =float, jumper hps, jumper lps, jumper high, jumper low, jumper pressure, jumper float, jumper over, "
            + "jump the, jump out, jump across, jump that, jump this, jump a, jump my, jump around, to jump, i jump, just jump, and jump, jump high, jump low, jump float, jumping the, jumping out, "
            + "bridge the, bridge out, bridge across, bridge that, bridge this, bridge over, bridge a, to bridge, i bridge, just bridge, bridging, bridge high, bridge low, bridge float, "
            + "loop the, looping, to loop, link the, linking, to link, strap out, strap the, short the, short across, short that, to short, just short, shorting out, short out the, short out that, "
            + "hotwire, hot wire, hot wiring, hotwiring"), Protections)
        {
            Reach = 8,
            ObjectFollows = true,
        },
        new(Defeat, new("tape, taping, wedge, wedging, hold, holding, pin, prop, force, forcing, tie, tying, zip tie, glue, stick, push, pushing, press, jam, clamp, weld, block, rubber band, lock"), HeldParts)
        {
            ObjectFollows = true, OnlyIfMeant = true,
        },
        new(Defeat, new("tape the, tape down, hold in, hold the contactor, push in the contactor, push the contactor, tie down, wedge the, manually close the, force the contactor, hold the relay, manually engage"), HeldParts),
        new(Defeat, new("bigger, larger, higher, heavier, oversized, oversize, stronger, upsize, foil, tinfoil, penny, coin, nail, paper clip, paperclip, piece of wire, screw, bolt, gum wrapper, copper wire, slug"),
            new("fuse, fuses, =fuse, breaker, =breaker, amp, amps"))
        {
            Unless = new("fuse holder screw, loose screw"), OnlyIfMeant = false,
        },
        new(Defeat, new("instead of, in place of, for a"), new("fuse, breaker, amp, amps")) { OnlyIfMeant = true, Unless = new("instead of 220, instead of 230, instead of 240") },
        new(Defeat, new("paper clip, paperclip, piece of wire, jumper wire, a wire, foil, screwdriver, coin, alligator clip, alligator clips, jumper lead, jumper cable"),
            new("across =float, across the, across those, across that, between the two, over the switch, in the switch, in place of the, across it"))
        {
            ObjectFollows = true, OnlyIfMeant = true,
        },
        new(Defeat, new("wires together, leads together, two wires, both wires, the wires"), new("tie, twist, join, connect, splice, nut, hook"))
        {
            OnlyIfMeant = true, Reach = 3, Unless = new("wires crossed, mixed up"),
        },
        new(Defeat, new("run without, run it without, running without, running it without, operate without, operate it without, start it without, run the unit without, "
            + "run the compressor without, use it without, leave it without, work without, run with no, run it with no, run it not, run the unit not, without"), new("overload, =overload, switch, =switch, safety, safeties, protection, float, guard, "
            + "fuse, breaker, =breaker, ground, earth, high pressure switch, cover, interlock, sensor, thermal, cutout, rcd, gfci, leak detector"))
        {
            ObjectFollows = true, Reach = 5, OnlyIfMeant = true,
        },
        new(Defeat, new("cut, remove, removing, disconnect, lift, clip, snip, unhook, take off, leave off, pull off, disconnecting, cutting, cut off, isolate, unplug, yank, rip out, pull out, take out, get rid of, swap out"),
            new("ground wire, the ground, earth wire, the earth, grounding, guard, fan guard, protective conductor, grille, interlock, overload, safety, safeties, pressure switch, float, rcd, gfci, safety switch, leak sensor, leak detector"))
        {
            ObjectFollows = true, OnlyIfMeant = true, Reach = 4,
        },
        new(Defeat, new("dummy resistor, fixed resistor, with a resistor, a resistor, put a resistor, use a resistor"), null) { OnlyIfMeant = true, Unless = new("inrush, soft start, precharge, measured") },
        new(Defeat, new("ignore, silence, unplug, disable, mute"), new("leak alarm, leak detector, gas alarm, leak sensor, gas detector, refrigerant alarm, refrigerant detector")),
        new(Defeat, new("keep resetting, reset it over and over, keep flipping, resetting the breaker over, keep hitting"), new("breaker, =breaker, reset, lockout")) { OnlyIfMeant = false },

        new(Vent, new("vent, venting, dump, dumping, release, releasing, purge, purging, bleed, bleeding, blow off, blowing off, blow out, let out, letting, burp, empty, emptying, discharge the, discharge all, "
            + "discharge it to, get rid of, drain the, drain out, let go, spill, exhaust, blast, crack the, crack a, throw away, dispose of"), Gases)
        {
            ObjectFollows = true, OnlyIfMeant = true, Reach = 4,
            Unless = new("not release, drain the pan, drain the water, not dump, release the clip, air vent, release valve stuck, purge air, drain line, drain pan, drain hose, not vent, blow out the drain, "
                + "blow out the line, empty the pan, empty the tank, empty pan, empty the bucket, bleed air, crack the valve, crack the service"),
        },
        new(Vent, new("let, letting, leave, get"), new("gas out, freon out, refrigerant out, gas go, charge out, charge go, gas off, gas escape, freon go, the gas out, refrigerant go, refrigerant escape, freon escape, it all out, it out into, charge off, refrigerant off"))
        {
            ObjectFollows = true, Unless = new("not let the gas out"),
        },
        new(Vent, new("atmosphere, into the air, to the air, in the air, open air, into the sky, to atmosphere, into the yard, in the garden, outdoors, in the bushes, out the window, outside"),
            new("vent, venting, dump, dumping, release, releasing, purge, blow, let, bleed, empty, discharge, open, letting, spray, crack, blast, cut, push, get rid"))
        {
            OnlyIfMeant = true, Unless = new("the outside, outside unit, outside fan, outside coil, outdoor unit, blow outside, blows, fan outside, unit outside, coil outside, open outside, box outside"),
        },
        new(Vent, new("without recovering, without recovery, skip recovery, skip the recovery, not recover, no recovery machine, not have a recovery, cut the line, cut the lines, cut the pipe, cut the pipes, cut the copper, "
            + "cut into the line, saw the pipe"), null)
        {
            OnlyIfMeant = true, Unless = new("someone cut, somebody cut, who cut"),
        },

        new(Gas, new("propane, r290, butane, lpg, camping, barbecue, bbq, hydrocarbon, sealant, stop leak, leak stop, leak sealer, sealer, oxygen, acetylene, compressed air, shop air, air compressor, "
            + "lighter gas, drop in, natural gas, ammonia, r600a, isobutane, different refrigerant, other refrigerant, another refrigerant, any refrigerant, wrong refrigerant, whatever gas, whatever refrigerant, old gas, cheaper gas, "
            + "r134a, r404a, r407c, r1234yf, car refrigerant, car gas, auto ac gas"),
            new("put, use, using, fill, filling, charge, charging, add, adding, top, pressurize, pressurizing, test, testing, pressure, instead, convert, mix, mixing, run, inject, recharge, substitute, replace, "
            + "swap, work with, blow, blowing, flush, check, leak, in, replacement, ok, okay, from, into, for"))
        {
            Reach = 9, OnlyIfMeant = false, Unless = new("propane heater, propane furnace, drop in voltage, drop in pressure, drop in temperature, temperature drop in, voltage drop in, pressure drop in, a drop in"),
        },
        new(Gas, new("mix, mixing, blend, combine"), new("refrigerants, refrigerant, gases, gas, r32, r410a, r22")) { ObjectFollows = true, OnlyIfMeant = true },
        new(Gas, new("r22, r32, r410a, r410, 410a, 410"), new("into r32, into r410a, into r22, in r32, in r410a, in r22, in the r32, in a r32, in an r32, in the r410a, in a r410a, in an r410a, in the r22, into the r32, "
            + "into the r410a, into an r32, into an r410a, into a r32, instead of r32, instead of r410a, in place of r410a, in place of r32, instead of the r32, instead of the r410a, in my r32, in my r410a, with r22, with r32, with r410a, with 410a, "
            + "instead of 410a, in 410a, in a 410a, in the 410a, instead of 410, in a 410, and r32, and r410a, and r22")) { Unless = new("is it r32 or, nameplate says") },
        new(Gas, new("top it up, top it off, top up, top off, topping it off, topping it up, topping off, gas and go, add some gas, add gas, add a bit, add some refrigerant, add refrigerant, add some freon, add freon, "
            + "add a little, add more gas, add more refrigerant, add more freon, splash of, squirt of, refill it, just recharge, charge by feel, add a pound, add some charge, add charge, shot of, keep adding, juice it up, boost the charge, gas it up, regas it"),
            new("without, just, can, could, every, leak, leaks, leaking, so it, should, tonight, for now, quick, keep, lets, rather than, instead of, by feel, no scales, not fix, not find, not repair, how much, go, anyway, let me, i will, okay, ok, until, skip, again"))
        {
            Reach = 12, Unless = new("needs topping, need topping, have to top, needs a top, has to be topped, had to top, ask to add, not top"),
        },

        new(Live, new("work hot, working hot, work on it hot, work it hot, working on it hot, work live, working live, work on it live, working on it live, work on live, work on this hot, work on this live, do it hot, do it live, "
            + "swap it hot, swap it live, change it hot, change it live, hot swap, hot work, live work, wire it hot, wire it live, replace it live, replace it hot, work on energized, working on energized, work energized, leave it live, leave it hot, "
            + "keep it live, keep it hot, done live, done hot, pull it hot, pull it live, do this live, do this hot, do that live, do that hot, live swap"), null),
        new(Live, new("live, energized, powered, powered up, power on, power still on, power is on, still on, juice on, breaker on, mains on, under power, with power, under voltage, plugged in, power up, while it is on, hot, without power off, not powered down"),
            new("work, working, swap, swapping, change, changing, replace, replacing, unplug, unplugging, touch, touching, poke, reach, reaching, solder, repair, rewire, disconnect, disconnecting, pull, pulling, fix, fixing, remove, "
            + "removing, tighten, tightening, loosen, open, opening, measure, measuring, clean, wash, washing, spray, connect, stick"))
        {
            Reach = 6, OnlyIfMeant = true,
            Unless = new("blows hot, blow hot, hot gas, hot air, not come on, hot day, hot days, gets hot, runs hot, hot water, it hot outside, i live, we live, people live, they live, not fix, hot when, hot side, too hot, still on the, room hot, hot room, "
                + "heat sink hot, hot line, hot pipe, is hot, not power on, not turn on, hot and, live in, power on light, hot weather"),
        },
        new(Live, new("without, skip, skipping, forget, forgetting, avoid, bother, bothering, do i have to, do i need to, do i really, must i, rather not, not want to, not have time, no time, not need to, not feel like, "
            + "is it necessary, not bother, not going to, instead of, no need to, ignore, not lock, not isolate, not isolating, not turn the power, not shut the power, not switching, not turning, not shutting"), Isolating)
        {
            ObjectFollows = true, Reach = 5, Unless = new("not turning off, not shutting off, not switching off, not shutting down"),
        },
        new(Live, new("discharge, short, shorting, drain, discharging, short out, bleed"), new("screwdriver, wrench, pliers, spanner, piece of metal, my hand, knife, coat hanger"))
        {
            Reach = 8,
        },
        new(Live, new("wet hands, bare hands, bare hand, my finger, my fingers, a finger, my hand, hand in, finger in, hands in, reach in, reach into, reaching in, stick something, stick a stick, stick a screwdriver, stick my"),
            new("live, running, spinning, fan, moving, on, power, powered, energized, terminals, measure, wires, touch, capacitor, inside, off"))
        {
            Reach = 8, OnlyIfMeant = true, Unless = new("turn it by, by hand, with my hand i can"),
        },
        new(Live, new("run, running, leave, leaving, operate"), new("cover off, covers off, cover open, panel off, panels off, without the cover, without cover, terminals exposed, open panel")) { Reach = 6, OnlyIfMeant = true },
        new(Live, new("braze, brazing, solder, soldering, weld, welding, torch, unbraze, unsweat, sweat, heat, heating, cut, cutting"),
            new("gas still in, gas in, charge in, charge still in, refrigerant in, refrigerant still in, under pressure, gas inside, pressure in, pressure on, pressurized, still charged, charged system, with pressure, freon in, "
            + "freon still in, full of gas, full of refrigerant, without recovering, without nitrogen, without pumping, with charge, gas on, while charged, while it is charged"))
        {
            ObjectFollows = true, Reach = 8, OnlyIfMeant = true,
        },
        new(Live, new("hammer, hit, bang, knock"), new("compressor, cylinder, bottle")) { ObjectFollows = true, OnlyIfMeant = true, Reach = 3 },
        new(Gas, new("heat, heating, torch, warm"), new("cylinder, bottle, tank")) { ObjectFollows = true, OnlyIfMeant = true, Reach = 3 },

        new(Owner, new("homeowner, house owner, home owner, tenant, renter, i rent, not a technician, not a tech, not technician, not tech, not licensed, no license, not have a license, not certified, diy, do it yourself, myself, my own, brother in law, my husband, "
            + "my son, my dad, my father, my nephew, my neighbor, handy, handyman, youtube, i own, watched a video, own the house, a friend, my friend, unlicensed, not trained, no training, never done"),
            new("open, change, replace, fix, charge, fill, add, recharge, move, unscrew, disconnect, measure, test, swap, wire, install, repair, remove, take, check, buy, poke, charging, adding, opening, replacing, changing, fixing, relocate, "
            + "refill, connect, braze, do it, put, probe"))
        {
            Reach = 16, OnlyIfMeant = true, Unless = new("not fix itself, not change"),
        },
    ];

    /// <summary>The words of all rules: the spelling must not mend them into others.</summary>
    public static readonly FrozenSet<string> Words =
        All.SelectMany(rule => rule.Act.Words.Concat(rule.Object?.Words ?? [])).ToFrozenSet(StringComparer.Ordinal);
}
