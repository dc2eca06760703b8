using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Talk that only shares words with dangers: where a part is, what a figure is, a safe way of working, another sense of
/// a word, a complaint.
/// </summary>
/// <remarks>Heard only where no rule of dangerous requests fits, and where nothing speaks of a shortcut.</remarks>
internal static class SafeWays
{
    /// <summary>
    /// Questions with which a message begins that ask where or what something is, or what to do about a danger.
    /// </summary>
    private static readonly WordPattern Openings = new("""
        where is, wheres, where are, where can i get, where do i get, where can i find, where do i find,
        where do i hand in, where do i renew, where do i write, what should i do if, what should we do if,
        how do i tell if, how do i know if, how do i know whether, how can i tell, how do i test, how do i check,
        how do you test, how do you check, how to test, how to check, what refrigerant is, which refrigerant is,
        which refrigerant does, what gas is, which gas is, how much charge is, what charge is, how much charge does,
        is it true that, is the warranty, is warranty, does the warranty, is it cheaper, what does the,
        what is the difference, whats the difference, should i turn it off, should i switch it off,
        should i shut it off, should i shut it down, do i turn it off, is it dangerous to, is it dangerous if,
        is it risky to, why must i not, why must we not, do i need to recover, do i have to recover,
        what do i have to do before, which depot, fire extinguisher, need a ladder, ladder needed, needs a ladder,
        what size fuse, what fuse size, do you think the, do you think it is
        """);

    /// <summary>Ways of working that are safe, said of what is done or to be done.</summary>
    private static readonly WordPattern Methods = new("""
        soap water, soapy water, soap bubbles, soap suds, soap solution, bubble solution, leak spray, let it thaw,
        let it melt, thaw with fan, fan only, fan mode, let the defrost, let the ice melt, all gas recovered,
        gas recovered, gas is recovered, charge recovered, charge is recovered, recovered it all, recovered all,
        recovered the gas, recovered the charge, system is empty, system empty, clear the drain, clean the drain,
        unblock the drain, flush the drain, blow out the drain, clear the drain line, nitrogen flowing,
        nitrogen is flowing, flowing nitrogen, right way, before i braze, before i open, before i touch, before opening,
        after the repair, plug out, always prove dead, proved dead first, prove it dead first, discharged it with the,
        right fuse, correct fuse, from the nameplate, as per the nameplate, charge is out, with the unit off,
        with unit off, leave it off, left it off, keep it off, damp cloth
        """);

    /// <summary>Words in a sense that has nothing to do with the danger.</summary>
    private static readonly WordPattern OtherSenses = new("""
        jumper set, jumper setting, jumper settings, jumper position, jumper is set, bypass valve, gas bypass,
        drain hose, vent for a second, vent for a minute, need to vent about, blow a fuse, blew his top,
        let off some steam, let off steam, customer signed, signed the sheet, time sheets, timesheet, timesheets,
        for the appointment
        """);

    /// <summary>With the power off: no danger where only looking, testing or cleaning is told of.</summary>
    private static readonly WordPattern PowerOff = new("""
        with power off, with the power off, power is off, power off at, switched off at the isolator, isolated
        """);

    private static readonly WordPattern Gentle = new("""
        test, measure, check, hose, rinse, wash, clean, cleaning, wipe, look, inspect, unplug
        """);

    /// <summary>A trouble that stays, told and not asked.</summary>
    private static readonly WordPattern StillIll = new("""
        but it still, but still, and it still, and still, still locks out, still trips, tripped again
        """);

    /// <summary>What makes a request of all this.</summary>
    private static readonly WordPattern Shortcuts = new("""
        without, skip, instead, bother, quick, quickly, quicker, anyway, just, jumper it, jumper the, bridge, bridged,
        bypass it, bypass the, link, linked, loop, looped, tape, wedge, fake, fool, trick, live, energized, power on,
        disable, disabled, deactivate, silence, mute, unplug the, disconnect, kill, cut, cut the, defeat, override,
        ignore, pins, pin, wires to, wire to, so i can, so that i can, so it, so that it, so they, not trip,
        keeps running, keep it running, hand, finger, fingers, tongue, lighter, flame, torch, candle, match, oxygen,
        propane, nobody, not tell, hide, get around, get past, around the, off switch, turn off the, switch off the,
        shut off the, outside, into the air, vent it, let it out, release, leave it on, myself, over and over
        """);

    /// <summary>A reading that was not taken, owned up to.</summary>
    private static readonly WordPattern NotTaken = new("""
        i did not measure, i not measure, we did not measure, i not measured, not measure it, not test it,
        did not test it, i not test
        """);

    private static readonly WordPattern ForRecord = new("""
        write, put, enter, make, number, say, sign, tick, claim, good, normal, need, certificate, report, what
        """);

    /// <summary>What asks for more beside what the unit does.</summary>
    private static readonly WordPattern Urges = new("""
        add, or nah, or no, put, ok, okay, fill, top, yes or no, right, yeah, let me, use, leave
        """);

    // "Power is off, hose it": a way told, in no more words than these.
    private const int MostWords = 16;

    /// <summary>Whether a message that no rule fits only sounds like a danger.</summary>
    public static bool Is(RequestWords request) =>
        request.Count <= MostWords && !Shortcuts.IsIn(request)
        && (Opens(request) || Methods.IsIn(request) || OtherSenses.IsIn(request)
            || (PowerOff.IsIn(request) && Gentle.IsIn(request)) || Complains(request) || OwnsUp(request));

    private static bool Opens(RequestWords request) => Openings.In(request).Any(opening => opening.First == 0);

    private static bool Complains(RequestWords request) => !request.EndsAsQuestion && !Intent.AsksOutright(request)
        && (StillIll.IsIn(request) || (TellsOfIt(request) && !Urges.IsIn(request)));

    private static bool OwnsUp(RequestWords request) =>
        NotTaken.IsIn(request) && !ForRecord.IsIn(request) && !request.EndsAsQuestion;

    /// <summary>"It hisses a bit when it stops": what the unit does.</summary>
    private static bool TellsOfIt(RequestWords request) =>
        request[0] == "it" && request[1].Length > 3 && request[1].EndsWith('s')
            && !request[1].EndsWith("ss", StringComparison.Ordinal) && request[1] is not ("needs" or "wants" or "lets");
}
