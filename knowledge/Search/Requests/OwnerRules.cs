using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Somebody without training means to open the unit or work on the circuit.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class OwnerRules
{
    private const string Page = "owner-opens-unit";

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("""
                just the owner, only the owner, i am the owner, i the owner, homeowner, house owner, home owner, tenant,
                renter, i rent, not a technician, not a tech, not technician, not tech, not licensed, no license,
                not license, not licence, not qualified, not have license, not have a license, not certified,
                uncertified, without a license, without license, without a licence, without a ticket, not ticket,
                not card, not epa, not cert, diy, do it yourself, myself, my own, brother in law, my husband, my son,
                my dad, my father, my nephew, my neighbor, handy, handyman, i own, watched a video, own the house,
                a friend, my friend, unlicensed, not trained, no training, never done
                """),
            new("""
                do, open, opening, change, replace, fix, charge, fill, add, recharge, move, unscrew, disconnect,
                measure, test, swap, wire, install, repair, remove, take, check, buy, poke, charging, adding, opening,
                replacing, changing, fixing, relocate, refill, connect, braze, hook, hook up, gages, manifold, walk him,
                walk her, talk him, talk her, unscrew, wiring, do it, put, probe, touch, lid off
                """))
        {
            Reach = 16, OnlyIfMeant = true, Unless = new("not fix itself, not change"),
        },
        new(Page, new("""
                owner, house owner, home owner, homeowner, landlord, landlady, tenant, tenants, customer, client, lady,
                old lady, mum, mom, mother, dad, grandma, grandpa, granny, wife, husband, kid, son, daughter, guest,
                receptionist, caretaker, janitor, cleaner, apprentice alone, helper, neighbor, i live here, my house,
                flatmate, roommate
                """),
            new("""
                take off, taking off, open, opening, unscrew, unscrewing, pop, remove, removing, push the relay,
                push the contactor, press the contactor, press the relay, jiggle, wiggle the wires, touch the wires,
                hold the probe, hold the probes, measure, test the capacitor, change the capacitor, change the fuse,
                reach inside, poke, pull the plug off the board, climb, hook up gages, evacuate, add gas, charge it,
                add refrigerant, braze
                """))
        {
            Reach = 9, ObjectFollows = true, IsOutright = true,
            Also = new("""
                cover, covers, lid, panel, electrical, electrical cover, terminal, terminals, relay, contactor, board,
                capacitor, wires, wiring, voltage, mains, control box, outdoor unit, roof, multimeter, lines, gages,
                refrigerant, screws, fuse
                """),
            And = new("""
                i will, going, gonna, let, have her, have him, have them, get her, get him, get them, ask, tell her,
                tell him, tell the, tell them, talk my, talk the, talk her, talk him, talk them, walk my, walk the,
                walk her, walk him, can the, can my, can he, can she, can they, could the, could my, teach me, guide,
                through, while i, while you, here, how do i, how can i, how to, from the phone, on the phone,
                over the phone, which screws, can hold, could hold, myself, himself, herself
                """),
            Unless = new("""
                opened, not open, should not, not let, window, front panel filter, filter, filters, not take, remote,
                should the, must the, not touch, told her not, told him not, fell off, came off, keep away, valve open,
                opens, stay away, front panel
                """),
        },
    ];
}
