using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to work live, or without the steps that make it safe.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class LiveWorkRules
{
    private const string Page = "work-live";

    private static readonly WordPattern Isolating = new("""
        isolating, isolation, isolate, lockout, lock out, lock it out, locking out, locking, lock off, locking off,
        loto, tagout, switching off, switching it off, switch off, switch it off, turning off, turning it off,
        turn off, turn it off, turning the power off, turn the power off, shutting off, shutting it off, shut off,
        shut it off, shut it down, shutting down, powering down, power down, power it down, killing, kill the power,
        cutting the power, disconnecting, wait, the wait, minute wait, minutes, gloves, ppe, proving, prove dead,
        discharging, discharge, waiting, the disconnect, turning power off, turn power off, glasses, shutdown,
        breaker off, switching, pulling the, safety procedure, safety steps, testing for dead, test for dead,
        checking for voltage, check for voltage, de energizing, deenergizing
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("""
                work hot, working hot, work on it hot, work it hot, working on it hot, work live, working live,
                work on it live, working on it live, work on live, work on this hot, work on this live, do it hot,
                do it live, swap it hot, swap it live, change it hot, change it live, hot swap, hot work, live work,
                working on live, work on live, working on energized, with power applied, wire it hot, wire it live,
                replace it live, replace it hot, work on energized, working on energized, work energized,
                leave it live, leave it hot, keep it live, keep it hot, done live, done hot, pull it hot,
                pull it live, do this live, do this hot, do that live, do that hot, live swap
                """), null) { Unless = new("is it live work, is that live work, is this live work, hot work permit") },
        new(Page, new("""
                live, energized, powered, powered up, while powered, while it is powered, power applied,
                breaker on while, power on, power still on, power is on, still on, juice on, breaker on, mains on,
                under power, with power, under voltage, plugged in, power up, while it is on, hot, without power off,
                not powered down
                """),
            new("""
                do, leave, wire, work, working, swap, swapping, change, changing, replace, replacing, unplug,
                unplugging, touch, touching, poke, reach, reaching, solder, repair, rewire, disconnect, disconnecting,
                pull, pulling, fix, fixing, remove, removing, tighten, tightening, loosen, open, opening, measure,
                measuring, clean, wash, washing, spray, connect, stick
                """))
        {
            Reach = 6, OnlyIfMeant = true,
            Unless = new("""
                blows hot, blow hot, hot gas, hot air, not come on, hot day, hot days, gets hot, runs hot, hot water,
                it hot outside, i live, we live, people live, they live, not fix, hot when, hot side, too hot,
                still on the, room hot, hot room, heat sink hot, hot line, hot pipe, is hot, not power on, not turn on,
                hot and, live in, power on light, hot weather, with power off, with the power off, is it live work
                """),
        },
        new(Page, new("""
                without, skip, skipping, forget, forgetting, avoid, bother, bothering, do i have to, do i need to,
                do i really, must i, rather not, not want to, not have time, not time, not need to, not feel like,
                is it necessary, not bother, not going to, instead of, no need to, ignore, too lazy, lazy, in a hurry,
                in a rush, not turn the power, not shut the power, not switching, not turning, not shutting
                """), Isolating)
        {
            ObjectFollows = true, Reach = 5, Unless = new("""
                not turning off, not shutting off, not switching off, not shutting down
                """),
        },
        new(Page, new("""
                not lock out, not shut the power, not turn the power, not switch the power, not kill the power,
                not cut the power, not shut power off, not turn power off, not gloves, without gloves, not ppe,
                not isolate, not isolating, not lock it out, not locking out, not lock off, not wear, not discharge,
                not prove, not switch it off first, not turn it off first, not lock the, not want to lock,
                not want to isolate
                """), null)
        {
            Also = new("i, we, can, do i, should, rather, customer, working, work, live, line"),
        },
        new(Page, new("""
                discharge, short, shorting, drain, discharging, short out, bleed
                """), new("""
                screwdriver, wrench, pliers, spanner, piece of metal, my hand, knife, coat hanger
                """))
        {
            Reach = 8,
        },
        new(Page, new("""
                wet hands, bare hands, bare hand, my finger, my fingers, a finger, my hand, hand in, finger in,
                hands in, reach in, reach into, reaching in, stick something, stick a stick, stick a screwdriver,
                stick my
                """),
            new("""
                live, running, spinning, fan, moving, on, power, powered, energized, terminals, measure, wires, touch,
                capacitor, inside, off
                """))
        {
            Reach = 8, OnlyIfMeant = true, Unless = new("turn it by, by hand, with my hand i can"),
        },
        new(Page, new("""
                run, running, leave, leaving, operate
                """), new("""
                cover off, covers off, cover open, panel off, panels off, without the cover, without cover,
                terminals exposed, open panel
                """)) { Reach = 6, OnlyIfMeant = true },
        new(Page, new("""
                torch out, torch off, burn off, burn out the, braze, brazing, solder, soldering, weld, welding, torch,
                unbraze, unsweat, sweat, heat, heating, cut, cutting
                """),
            new("""
                gas is inside, gas is in, gas is still, while the gas, gas still in, refrigerant inside,
                charge inside, freon inside, refrigerant in it, gas in, charge in, charge still in, refrigerant in,
                refrigerant still in, under pressure, gas inside, pressure in, pressure on, pressurized,
                still charged, charged system, with pressure, freon in, freon still in, full of gas,
                full of refrigerant, without recovering, without nitrogen, without pumping, with charge, gas on,
                while charged, while it is charged, at # bar, # bar in, # bar on, # psi in
                """))
        {
            ObjectFollows = true, Reach = 8, OnlyIfMeant = true,
        },
        new(Page, new("""
                hammer, hit, bang, knock
                """), new("""
                compressor, cylinder, bottle
                """)) { ObjectFollows = true, OnlyIfMeant = true, Reach = 3 },
        new(Page, new("""
                short the capacitors, short the caps, short the capacitor, short the cap, short out the capacitor,
                short out the caps, short out the capacitors, short across the capacitor, short across the caps,
                shorting the capacitors, shorting the caps
                """), null)
        {
            OnlyIfMeant = true,
        },
        new(Page, new("""
                touch, touching, lick, grab, taste, feel
                """), new("""
                terminals, wires, wire, live, bare, bus bar, capacitor, capacitors, conductor, conductors
                """)) { Reach = 4, OnlyIfMeant = true, ObjectFollows = true, Unless = new("""
                not touch, wires touch
                """) },
        new(Page, new("""
                water on, pour water, water over, spray, hose, rinse, with water, pressure washer, jet wash
                """), new("""
                board, pcb, electrical, electronics, terminals, energized, live, powered, control box, electric box
                """)) { Reach = 6, OnlyIfMeant = true, ObjectFollows = true, Unless = new("""
                    got, after, was, leaks, drips, dripping, came, contact spray
                    """) },
        new(Page, new("megger, meg, insulation test, run the compressor, start the compressor, power the compressor"),
            new("""
                under vacuum, on a vacuum, under a vacuum, in vacuum, in a vacuum
                """)) { Reach = 5, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true },
        new(Page, new("""
                under load, while running, while it is running, while it runs, with it running
                """), new("""
                unplug, disconnect, pull, touch, plug, open
                """)) { Reach = 6, OnlyIfMeant = true },
        new(Page, new("""
                right after, immediately after, straight after, as soon as
                """), new("""
                switching off, switch off, turning off, turn off, power off, i turn it off, shutting off
                """)) { OnlyIfMeant = true, ObjectFollows = true, Also = new("""
                open, touch, cover, board, terminals, capacitor
                """) },
        new(Page, new("""
                without discharging, not discharging, without waiting, not waiting, without proving, without testing
                """), null) { OnlyIfMeant = true },
        new(Page, new("""
                smoke, smoking, burning, on fire, flames
                """), new("""
                keep running, keep it on, keep using, keep it running, continue, still use, leave it on, run it
                """)) { Reach = 10, OnlyIfMeant = true },
    ];
}
