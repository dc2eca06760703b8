using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to vent refrigerant, to fill in something else, or to top up a leak.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class RefrigerantRules
{
    private const string Vent = "vent-refrigerant";
    private const string Gas = "top-up-leak";
    private const string Heat = "heat-charged-circuit";

    private static readonly WordPattern Gases = new("""
                =refriger, gas, gases, charge, freon, refrigerant, r32, r410a, r22, system, pressure, it
                """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Vent, new("""
                vent, venting, dump, dumping, release, releasing, purge, purging, bleed, bleeding, blow off,
                blowing off, blow out, let out, letting, burp, empty, emptying, discharge the, discharge all,
                discharge it to, get rid of, drain the, drain out, let go, spill, exhaust, blast, crack the, crack a,
                throw away, dispose of
                """), Gases)
        {
            ObjectFollows = true, OnlyIfMeant = true, Reach = 4,
            Unless = new("""
                not release, drain the pan, drain the water, not dump, vent the room, vent the house, vent the loft,
                roof vent, release the clip, air vent, release valve stuck, purge air, drain line, drain pan,
                drain hose, not vent, blow out the drain, blow out the line, empty the pan, empty the tank, empty pan,
                empty the bucket, bleed air, crack the valve, crack the service
                """),
        },
        new(Vent, new("""
                vent the, vent it, vent this, dump the, dump it, dump this, dump all, release the gas,
                release the refrigerant, release the charge, release the freon, blow the charge, blow the gas,
                blow the refrigerant, blow it off, blow off the, let the gas, let the freon, let the refrigerant,
                let the charge, purge the refrigerant, bleed the refrigerant, bleed the charge, bleed the gas,
                vent r32, vent r410a, venting the
                """),
            new("""
                gas, gases, charge, freon, refrigerant, it, this, r32, r410a, system, =refriger, out, off, air, go,
                all
                """))
        {
            Reach = 4, Unless = new("""
                not release, not let, not dump, drain, pan, pump, water, vent the room, vent the house, vent the area
                """),
        },
        new(Vent, new("""
                let, letting, leave, get
                """), new("""
                gas out, freon out, refrigerant out, gas go, charge out, charge go, gas off, gas escape, freon go,
                the gas out, refrigerant go, refrigerant escape, freon escape, it all out, it out into, charge off,
                refrigerant off
                """))
        {
            ObjectFollows = true, Unless = new("not let the gas out"),
        },
        new(Vent, new("""
                atmosphere, into the air, to the air, in the air, open air, into the sky, to atmosphere,
                into the yard, in the garden, refrigerant outdoors, gas outdoors, it outdoors, charge outdoors,
                in the bushes, out the window, gas outside, charge outside, it outside, freon outside,
                refrigerant outside, go outside
                """),
            new("""
                vent, venting, dump, dumping, release, releasing, purge, blow, let, bleed, empty, discharge, open,
                letting, spray, crack, blast, cut, push, get rid
                """))
        {
            OnlyIfMeant = true, Unless = new("""
                the outside, outside unit, outside fan, outside coil, outdoor unit, blow outside, blows, fan outside,
                unit outside, coil outside, open outside, box outside
                """),
        },
        new(Vent, new("""
                without recovering, without recovery, skip recovery, skip the recovery, not recover,
                no recovery machine, not have a recovery, cut the line, cut the lines, cut the pipe, cut the pipes,
                cut the copper, cut into the line, saw the pipe
                """), null)
        {
            OnlyIfMeant = true, Unless = new("someone cut, somebody cut, who cut"),
        },
        new(Gas, new("""
                propane, r290, butane, lpg, camping, barbecue, bbq, hydrocarbon, sealant, stop leak, leak stop,
                leak sealer, sealer, oxygen, acetylene, compressed air, shop air, air compressor, lighter gas,
                drop in, natural gas, ammonia, r600a, isobutane, different refrigerant, other refrigerant,
                another refrigerant, any refrigerant, wrong refrigerant, whatever gas, whatever refrigerant, old gas,
                cheaper gas, r134a, r404a, r407c, r1234yf, car refrigerant, car gas, auto ac gas
                """),
            new("""
                put, use, using, fill, filling, charge, charging, add, adding, top, pressurize, pressurizing, test,
                testing, convert, mix, mixing, inject, recharge, refill, substitute, replace, swap, run, flush, blow,
                retrofit
                """))
        {
            Reach = 9, Unless = new("""
                propane heater, propane furnace, drop in voltage, drop in pressure, drop in temperature,
                temperature drop in, voltage drop in, pressure drop in
                """),
        },
        new(Gas, new("""
                mix, mixing, blend, combine
                """), new("""
                refrigerants, refrigerant, gases, gas, r32, r410a, r22, 22, 410, 134, 134a, 407, 404a
                """)) { ObjectFollows = true, OnlyIfMeant = true },
        new(Gas, new("""
            mix, mixing, mixed, blend, blended, blending
            """), new("propane, butane, r32, r410a, r22, 32, 22, 410, 134, 134a"))
        {
            Reach = 4, IsOutright = true, Also = new("""
                ratio, percent, proportion, how much of each, recommend, half and half
                """),
        },
        new(Gas, new("""
                r22, r32, r410a, r410, 410a, 410
                """), new("""
                into r32, into r410a, into r22, in r32, in r410a, in r22, in the r32, in a r32, in an r32,
                in the r410a, in a r410a, in an r410a, in the r22, into the r32, into the r410a, into an r32,
                into an r410a, into a r32, instead of r32, instead of r410a, in place of r410a, in place of r32,
                instead of the r32, instead of the r410a, in my r32, in my r410a, with r22, with r32, with r410a,
                with 410a, instead of 410a, in 410a, in a 410a, in the 410a, instead of 410, in a 410, and r32,
                and r410a, and r22
                """)) { Unless = new("""
                is it r32 or, nameplate says
                """) },
        new(Gas, new("""
                top it up, top it off, top up, top off, topping it off, topping it up, topping off, gas and go,
                add some gas, add gas, add a bit, add some refrigerant, add refrigerant, add some freon, add freon,
                add a little, add more gas, add more refrigerant, add more freon, splash of, squirt of, refill it,
                just recharge, charge by feel, add a pound, add some charge, add charge, shot of, keep adding,
                juice it up, boost the charge, gas it up, regas it
                """),
            new("""
                without, just, can, could, every, leak, leaks, leaking, so it, should, tonight, for now, quick, keep,
                lets, rather than, instead of, by feel, no scales, not fix, not find, not repair, how much, go,
                anyway, let me, i will, okay, ok, until, skip, again
                """))
        {
            Reach = 12, Unless = new("""
                needs topping, need topping, have to top, needs a top, has to be topped, had to top, ask to add,
                not top
                """),
        },
        new(Heat, new("""
                heat, heating, torch, warm
                """), new("""
                cylinder, bottle, tank
                """)) { ObjectFollows = true, OnlyIfMeant = true, Reach = 3 },
        new(Heat, new("""
                cylinder, cylinders, bottle, bottles, canister
                """), new("""
                stove, hob, hotplate, oven, boiling water, boiling, campfire, microwave
                """)) { Reach = 8, OnlyIfMeant = true, Unless = new("water bottle, baby bottle") },
        new(Vent, new("""
                let it out, let it all out, let it bleed, let it blow, let it go, let it escape, bleed it off,
                bleed off, not recovery machine, not recovery, without recovery, let it vent, let them out
                """),
            new("""
                flare, valve, port, service, gas, refrigerant, freon, charge, pipe, line, =refriger, out, slowly, air,
                hose
                """))
        {
            Reach = 10, OnlyIfMeant = true, Unless = new("water, drain, pan"),
        },
        new(Gas, new("""
                r22, r32, r410a, r410, 410a
                """), new("""
                to the r410a, to r410a, to the r32, to r32, to an r410a, to an r32, to a r32, to a r410a, to r22,
                to the r22, system with r410a, system with r32, system with r22, system with 410a, unit with r22,
                unit with r32, unit with r410a
                """))
        {
            Reach = 4, OnlyIfMeant = true,
        },
        new(Gas, new("""
                seal, plug, stop, fix, repair
                """), new("""
                sealant, stop leak, leak sealer, sealer, epoxy, chewing gum, jb weld
                """)) { Reach = 6, OnlyIfMeant = true },
        new(Gas, new("""
                torch, flame, open flame, burner, lighter, blowtorch
                """), new("""
                charged, pressurized, refrigerant, r32, gas, cylinder, bottle, leak, full line, =refriger
                """)) { Reach = 8, OnlyIfMeant = true },
        new(Gas, new("""
                braze, brazing, weld, welding, solder, smoke
                """), new("""
                near the r32, near the leak, near r32, near a leak, with r32, next to the leak, near the gas
                """)) { Reach = 5, OnlyIfMeant = true },
        new(Gas, new("""
                r22, r32, r410a, r410, 410a, 410, 407, 407c, r407c, 404, 404a, r404a, 134a, r134a, propane
                """), new("go in with, in with the, go in on top, on top of the, together with the"))
        {
            Reach = 8, OnlyIfMeant = true, Also = new("can, could, ok, okay, may, will it, is it, fine, does it"),
        },
    ];
}
