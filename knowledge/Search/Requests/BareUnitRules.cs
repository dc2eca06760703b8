using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>
/// Requests to go on with something missing that keeps people safe: a guard, a cover, the earth, or a sound supply.
/// </summary>
/// <remarks>Common practice, no source.</remarks>
internal static class BareUnitRules
{
    private static readonly WordPattern Covers = new("""
        cover, =cover, lid, panel, side panel, access panel, casing, guard, fan guard, fan cage, cage, grille, grill,
        fan grille, mesh, top plate, terminal cover, electrical cover, shroud, door, hood
        """);

    private static readonly WordPattern Absent = new("""
        off, open, lost, missing, gone, broken, bent, cracked, broke, without, not fit, removed, blown away, threw,
        thrown away, not there, left off, not got, not have, stolen, rusted, rusty, snapped
        """);

    private static readonly WordPattern GoOn = new("""
        can it run, can it work, can it stay, will it run, will it work, run it, run without, run open, run like,
        run anyway, run bare, use it, leave it, keep it, keep running, still run, still use, does it matter,
        does it need, is it needed, really need, ok to run, safe to run, fine without, ok without, works without,
        work without, run that way, for the winter, for the summer, all summer, all winter, for a while, till i find,
        until i find, so we can see, so i can see, matter much, bin it, chuck it
        """);

    private static readonly WordPattern Earths = new("""
        earth, earthing, earth wire, ground, grounding, ground wire, ground connection, third wire, green wire,
        earth core, pe
        """);

    private static readonly WordPattern Wet = new("""
        water, rain, rainwater, drips, condensate, wet, flooded, flood, soaked, damp, soaking
        """);

    private static readonly WordPattern Electrics = new("""
        electrics, electrical, electrical box, control box, board, pcb, outlet, socket, plug, plug socket, receptacle,
        terminals, terminal block, junction box, wiring, power strip, isolator, breaker box, fuse box
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new("defeat-protection", Covers, Absent)
        {
            Reach = 5, IsOutright = true, Also = GoOn, Unless = new("""
                he, they, someone, somebody, why, not open, opens, door open, window, off by itself, power off,
                is off now, back on, fan off, turns off, switches off, unit off, comes off, order, new one
                """),
        },
        new("defeat-protection", Earths, new("""
            not needed, not need, not necessary, unnecessary, not required, not matter, optional, left off, leave off,
            leave it off, leave out, not connect, not connected, water tap, tap, gas pipe, water pipe, radiator,
            neutral, nail, screw
            """))
        {
            Reach = 6, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                not needed, not need, not necessary, unnecessary, not required, not matter, optional, can, could, ok,
                tie, use, connect, so, leave, right, do i, to
                """),
            Unless =
                new(ToldWords.Told + ", measure, reads, volts between, voltage between, not connected and, ohm, ohms"),
        },
        new("keep-running-danger", Wet, Electrics)
        {
            Reach = 7, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                can it still, will it still, still cool, still heat, still run, still use, keep it on, keep on,
                keep running, keep using, keep it running, leave it on, leave on, run it, use it anyway, dry it running,
                dry while, power on now, turn it on, switch it on, turn it back on
                """),
            Unless = new("""
                he, they, someone, somebody, should i turn it off, should i switch it off, outdoor board, not keep,
                dried, after it dried, will not, not turn it on, shut it off, switch it off, turn it off
                """),
        },
        new("unsafe-height-or-storm", new("""
            thunder, lightning, storm, thunderstorm, gale, high wind, icy, ice on the roof, wet roof, snow on the roof
            """),
            new("""
                more minutes, # minutes, minutes, just finish, almost done, nearly done, one more, last screw, go up,
                go out, climb, stay up, on the roof, quick look, keep at it
                """))
        {
            Reach = 9, OnlyIfMeant = true, IsOutright = true, Also = new("""
                roof, condenser, outdoor, outside, ladder, up, unit, it
                """), And = new("need, can, could, just, finish, should, ok, go, will, let me, quick, more, is it"),
            Unless = new("""
                after the, after a, since, last night, came through, struck, was, yesterday, went, blew, strike, ago,
                lasted, trips, trip, fan, went off, every, runs for, run for, stops, defrost
                """),
        },
        new("work-live", new("""
            without flipping, without flip, without killing, without kill, without cutting, without touching,
            without turning, without switching, without shutting, without pulling, not want power off,
            not want the power off, not flip, not kill, not let me shut, not let us shut
            """), new("""
                breaker, power, the power, isolator, disconnect, mains, main, switch, it, supply, current, juice
                """))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                change, replace, swap, fit, wire, repair, fix, remove, test, unplug, take, open, work, tighten, clean,
                board, capacitor, motor, do
                """),
            Unless = new(ToldWords.Told + ", reset the, not work, will not, restart"),
        },
        new("work-live", new("""
            unplug, disconnect, pull, plug in, reconnect
            """), new("""
                under load, on load, while running, while it runs, with it running, while live, live, hot,
                with power on, with the power on, powered
                """))
        {
            Reach = 6, OnlyIfMeant = true, IsOutright = true,
            Unless = new(ToldWords.Told
                + ", load test, pipe is hot, hot gas, hot water, not unplug, should not, runs hot, hot day, not live"),
        },
    ];
}
