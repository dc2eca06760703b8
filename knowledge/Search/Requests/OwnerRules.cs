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
                just the owner, only the owner, i am the owner, i the owner, homeowner, house owner, home owner,
                tenant, renter, i rent, not a technician, not a tech, not technician, not tech, not licensed,
                no license, not license, not licence, not qualified, not have license, not have a license,
                not certified, uncertified, without a license, without license, without a licence, without a ticket, not ticket, not card, not epa, not cert, diy, do it yourself, myself, my own, brother in law, my husband, my son, my dad,
                my father, my nephew, my neighbor, handy, handyman, i own, watched a video, own the house,
                a friend, my friend, unlicensed, not trained, no training, never done
                """),
            new("""
                do, open, opening, change, replace, fix, charge, fill, add, recharge, move, unscrew, disconnect,
                measure, test, swap, wire, install, repair, remove, take, check, buy, poke, charging, adding, opening,
                replacing, changing, fixing, relocate, refill, connect, braze, hook, hook up, gages, manifold, walk him, walk her, talk him, talk her, unscrew, wiring, do it, put, probe, touch, lid off
                """))
        {
            Reach = 16, OnlyIfMeant = true, Unless = new("not fix itself, not change"),
        },
    ];
}
