using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>
/// Requests to bring mains where it does not belong: onto signal terminals, back through a lead, over bare joints.
/// </summary>
/// <remarks>Common practice, no source.</remarks>
internal static class SupplyRules
{
    private const string Page = "work-live";

    private static readonly WordPattern Mains = new("""
        mains, line voltage, mains voltage, 230, 230v, 240, 240v, 220, 220v, 120, 120v, 110, 110v, 115, 208, 400, 400v,
        live wire, hot wire, a live, the live, the hot, phase, full voltage
        """);

    private static readonly WordPattern Signals = new("""
        comms, comms terminal, comms wire, communication, communication terminal, communication wire, signal terminal,
        signal wire, data wire, data line, =signal, s terminal, terminal 3, sensor, =sensor, sensor plug,
        sensor terminal, thermistor, float switch, remote terminals, low voltage, dc motor, fan plug, fan connector,
        valve coil, stepper
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("""
            connect, connecting, feed, feeding, put, putting, apply, applying, send, sending, give, inject, shove, hook,
            wire, run, jump, bring, touch, flash, zap, hit
            """), Mains)
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Also = Signals,
            Unless = new(ToldWords.Told
                + ", not connect, measure, measured, reads, reading, what voltage, should there be, is there, "
                + "supposed, not give, gives, fuse, breaker, amp"),
        },
        new(Page, new("""
            backfeed, backfeeding, back feed, suicide cord, suicide lead, male to male, male male, double male,
            2 male plugs, plug on both ends, plugs on both ends, plug at both ends, plugs at both ends
            """), null)
        {
            OnlyIfMeant = true, IsOutright = true, Unless = new(ToldWords.Told),
        },
        new(Page, new("""
            twist, twisting, twist together, wrap, join, joining, splice, splicing, connect, extend, choc block,
            chocolate block, terminal strip, wire nut
            """),
            new("""
                not box, without a box, without box, without a junction box, not junction box, just tape, some tape,
                with tape, in tape, insulating tape, electrical tape, insulation tape, duct tape
                """))
        {
            Reach = 9, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                mains, cable, cables, interconnect, interconnecting, supply, power wires, power cable, live, wires,
                feed, flex, cord, under the floor, in the wall, in the ceiling, outdoors, in the loft
                """),
            Unless = new(ToldWords.Told + ", insulation tape on the pipe, pipe, pipes, drain, lagging"),
        },
        new(Page, new("""
            feed, feeding, supply, supplying, power, wire, run
            """), new("""
                2 different breakers, 2 different circuits, different circuits, 2 circuits, 2 breakers, 2 supplies,
                separate circuits, 2 feeds
                """))
        {
            Reach = 9, ObjectFollows = true, OnlyIfMeant = true, Also = new("""
                so if 1, so if one, so that if one, so that if 1, if 1 trips, if one trips, other still, still goes,
                still runs, keeps going, in case 1, in case one, either
                """),
            Unless = new(ToldWords.Told),
        },
    ];
}
