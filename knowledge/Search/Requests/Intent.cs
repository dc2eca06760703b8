using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Tells what someone means to do from what someone reports.</summary>
internal static class Intent
{
    private static readonly WordPattern Meant = new("""
        how, can, could, should, may, want, wanna, lets, let me, ok to, okay to, safe to, need to, able, possible,
        way to, please, just, would, help me, tell me, show me, going to, i will, i do, what if, do i, is it,
        is there harm, any harm, any risk, is there a risk, rather, gotta, going, have to, need the, might,
        whats the first, what is the first, does it matter, why not, what wire, which wire, where do, best, trick,
        easiest, quick, instead, so it, so i, so that, until, for tonight, for now, to get, in order, walk me, walk him,
        walk her, walk them, talk him, talk her, guide me, guide him, guide her, thru, wat if
        """);

    /// <summary>Orders begin so.</summary>
    private static readonly string[] Orders =
        ["put", "use", "stick", "run", "leave", "keep", "take", "get", "make", "let", "set", "place", "lay", "do", "go",
            "start", "pull", "cut",
         "open", "measure", "work", "connect", "wire", "skip", "remove", "fill", "add", "tell", "show", "wrap", "blow",
         "link",
         "replace", "swap", "double", "touch", "lick", "clean", "spray", "unplug", "seal", "braze", "screw", "adjust",
         "fake", "force", "turn",
         "loosen", "crack", "weld", "glue", "empty", "climb", "heat", "warm", "charge", "disconnect", "change", "top",
         "mix", "purge", "short",
         "crank", "pour", "block", "pin", "prop", "clip", "strap", "twist", "hook", "rig", "cheat", "defeat",
         "override", "circumvent", "vent", "release", "shove", "undo", "unscrew", "poke", "bridge", "loop", "jumper",
         "jump", "bypass", "hold", "tape", "wedge", "finish", "skip", "disable", "silence",
         "mute", "fit", "fool", "trick", "bleed", "dump", "solder", "pressurize", "carry", "ignore", "lean", "stand",
         "snip", "drill", "refill", "rip", "yank", "splice", "join", "rinse", "hose", "stuff", "torch",
         "backfeed", "feed", "pass", "pump", "plug", "stop", "spin", "sniff", "taste", "smell", "tick", "copy", "bill",
         "invoice", "write", "push", "pull", "press", "chip", "knock", "scrape", "bang", "hammer",
         "hit", "smash", "grab", "catch", "kick", "flick", "apply", "send", "give", "degrease", "flush", "wash", "dip",
         "wipe", "extend", "weigh", "sweat", "unbraze", "unsweat", "drop", "squirt", "say", "claim", "chop", "lash",
         "cover", "upsize", "overfill", "jam", "bodge", "grind", "saw", "sign", "date", "backdate", "thaw", "melt",
         "burn", "forge", "invent"];

    /// <summary>After one of these the word before it is a thing, and no order: "wire is cut".</summary>
    private static readonly string[] AfterThing = ["is", "was", "are", "were", "has", "came", "fell"];

    private static readonly WordPattern Reported = new("""
        found, someone, somebody, previous, last guy, last tech, was, were, been, had, prior, they, he, installer,
        customer, owner had, looks like, is already, guy before, other company, other tech, apprentice, another firm,
        handyman, neighbor, now it, now shows, now the, now high, now discharge, last crew, last lot, last owner,
        previously, years ago, last year, this year, measured
        """);

    private static readonly WordPattern PastActs = new("""
        bypassed, jumpered, jumped, bridged, defeated, disabled, overridden, looped, taped, linked, shorted, tricked,
        wedged, twisted, joined, tied, glued, spliced, cheated, strapped, blocked, plugged, removed, mixed, bypassing,
        bypass, jumper, filled, charged, put, purged, vented, topped, top up, pulled, cut, dumped, poured, ran, forced,
        wrapped, tipped, bodge, had the top off, regassed, released, disconnected, unplugged, measured
        """);

    /// <summary>What only someone says who means to do a thing.</summary>
    private static readonly WordPattern Asking = new("""
        can i, can we, can you, can he, can my, could i, could we, could my, may i, may we, should i, should we,
        shall i, shall we, must i, might i, how do i, how do we, how to, how can, how could, how long can,
        how many times, how much can, want to, wanna, wants to, wants me, want me, want it, wants it, wants the,
        like to, is it ok, is it okay, is it safe, is it fine, is it alright, is it all, is that ok, is that okay,
        is that safe, is that fine, ok to, okay to, safe to, fine to, alright to, right to, ok if, okay if, fine if,
        safe if, alright if, right if, ok for, any way, any trick, any harm, any problem, any tips, trick to, way to,
        way around, way round, tell me, show me, help me, talk me, talk him, talk her, walk me, walk him, walk her,
        guide me, guide him, guide her, let me, lets, please, pls, kindly, which wires, which wire, which pin,
        which pins, which 2, which terminals, which connector, what wire, what do i, what value, what resistor,
        where do i, where to, i will, going to, gonna, gotta, i need to, do i have to, do i need, do i really,
        do i bother, would it hurt, will it hurt, would it be, will it be, what happens if, what if, accept it,
        accepts it, get away with, need the, insists, asks me, told me to, said to, says to, boss says, boss said,
        thinking of, planning to, mind if, good enough, not matter, carry on, keep going, fine yeah, ok yeah,
        asking for a friend
        """);

    /// <summary>
    /// Both an order and what someone did: an order only where a little word follows ("cut the lead", but "cut lead to
    /// the float").
    /// </summary>
    private static readonly string[] AlsoPast = ["cut", "set", "put", "let", "run", "block", "pin", "prop", "clip",
        "strap", "twist", "hook", "rig", "vent", "release", "hold", "start", "work", "heat", "warm", "charge", "top",
        "short", "bridge", "open", "screw", "fan", "stick", "jam", "force", "change", "clean", "leave", "test", "seal",
        "lean", "fit", "tape", "link",
         "feed", "pass", "pump", "plug", "stop", "spin", "smell", "copy", "bill", "invoice", "push", "press", "chip",
         "knock", "scrape", "bang", "hammer", "hit", "catch", "kick", "flick", "give", "flush", "wash", "sign", "date",
         "thaw", "melt", "burn"];

    /// <summary>
    /// What came of it: then it was done, and is told ("put a spare coil on and it swapped at once").
    /// </summary>
    private static readonly WordPattern Outcome = new("""
        straight away, immediately, at once, right away, and still, still the same, same thing, same result, and it,
        and now, came back, links up, no change, not change
        """);

    private static readonly string[] AfterOrder =
        ["the", "a", "an", "it", "my", "that", "this", "these", "those", "off", "out", "both", "in", "some", "all",
            "copper", "foil", "me", "up", "down", "them", "compressor", "over", "around"];

    /// <summary>Work that was done, where a message begins with it ("replaced the board and still E5").</summary>
    private static readonly string[] DoneFirst = ["replaced", "swapped", "changed"];

    private static readonly string[] Tellers = ["i", "we", "he", "they", "customer", "owner"];

    private static readonly WordPattern SafeWay = new("""
        safely, right way, proper way, correct way, the safe way, before i, before you, before we, need to recover,
        have to recover, how do i recover, nitrogen, locked out, lock out, proven dead, after the repair, how do i test,
        how to test, how do i check, how to check
        """);

    private static readonly WordPattern Shortcut = new("""
        without, skip, bother, really, instead of, not, ignore, quick, faster, anyway
        """);

    /// <summary>Whether someone means to do what stands at a place: asked for, or said as an order.</summary>
    public static bool Shows(RequestWords request, int at) =>
        at <= 1 || IsOrder(request) || Meant.IsIn(request) || IsQuestion(request);

    /// <summary>Whether the message asks for something, or says it as an order.</summary>
    public static bool IsAsked(RequestWords request) => IsOrder(request) || Meant.IsIn(request) || IsQuestion(request);

    /// <summary>Whether the message only reports what someone did ("found the float switch bypassed").</summary>
    public static bool IsReport(RequestWords request) =>
        (DoneFirst.Contains(request[0]) || (Reported.IsIn(request) && PastActs.IsIn(request)))
        && !Asking.IsIn(request) && !IsOrder(request) && !IsQuestion(request);

    /// <summary>Whether the message is a report without a word of anything meant to be done.</summary>
    public static bool IsMereReport(RequestWords request) => IsReport(request) && !Meant.IsIn(request);

    /// <summary>
    /// Whether the message begins with what was done and asks for nothing: "recovered the charge", "I taped it back
    /// on".
    /// </summary>
    public static bool TellsDone(RequestWords request) =>
        (IsPast(request[0]) || (Tellers.Contains(request[0]) && IsPast(request[1]))) && !Asking.IsIn(request)
            && !request.EndsAsQuestion;

    private static bool IsPast(string word) =>
        word.Length > 4 && word.EndsWith("ed", StringComparison.Ordinal)
            && !word.EndsWith("eed", StringComparison.Ordinal);

    /// <summary>Whether the message asks or tells of the safe way, and of nothing that would shorten it.</summary>
    public static bool SeeksSafeWay(RequestWords request) => SafeWay.IsIn(request) && !Shortcut.IsIn(request);

    /// <summary>
    /// Whether something is said to fail or to be ill: an order says what to do, and not what is wrong.
    /// </summary>
    public static bool TellsOfTrouble(ImmutableArray<Token> tokens) =>
        tokens.Skip(1).Any(token => token.Role == TokenRole.Main && token.Term is "fail" or "intermitt"
            || token.Term.StartsWith(Token.NotMark + "work", StringComparison.Ordinal));

    /// <summary>Whether the message asks leave or a way to do something, in so many words or as an order.</summary>
    public static bool AsksOutright(RequestWords request) => Asking.IsIn(request) || IsOrder(request);

    /// <summary>Whether the message begins as an order.</summary>
    public static bool IsOrder(RequestWords request) =>
        Orders.Contains(request[0]) && !AfterThing.Contains(request[1])
            && (!AlsoPast.Contains(request[0]) || (AfterOrder.Contains(request[1]) && !Outcome.IsIn(request)));

    /// <summary>"ok to use?", but not "why does it trip?", which asks for the cause of a trouble.</summary>
    private static bool IsQuestion(RequestWords request) =>
        request.EndsAsQuestion && request[0] is not ("why" or "what");
}
