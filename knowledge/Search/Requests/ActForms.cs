using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>
/// The plain form of what somebody does: "pulling" is "pull". What units do by themselves ("turning", "leaking") stays
/// as it is.
/// </summary>
internal static class ActForms
{
    private static readonly FrozenSet<string> Plain = new[]
    {
        "put", "use", "stick", "leave", "keep", "take", "make", "let", "place", "pull", "cut", "connect", "wire",
        "skip", "remove", "fill", "add", "wrap", "link", "replace", "swap",
        "touch", "lick", "unplug", "seal", "braze", "screw", "adjust", "fake", "force", "loosen", "crack", "weld",
        "glue", "empty", "climb", "disconnect", "change", "mix", "purge", "short",
        "crank", "pour", "pin", "prop", "clip", "strap", "twist", "hook", "rig", "cheat", "defeat", "override",
        "circumvent", "vent", "release", "shove", "undo", "unscrew", "poke", "bridge",
        "loop", "jumper", "bypass", "tape", "wedge", "disable", "silence", "mute", "fool", "trick", "dump", "solder",
        "pressurize", "ignore", "lean", "snip", "drill", "refill", "rip", "yank",
        "splice", "join", "hose", "stuff", "backfeed", "sniff", "taste", "tick", "copy", "bill", "invoice", "write",
        "push", "chip", "scrape", "hammer", "smash", "grab", "kick", "flick",
        "degrease", "sweat", "unbraze", "invent", "forge", "cap", "cover", "prod", "flip", "deactivate", "eliminate",
        "delete", "spoof", "reach", "pop",
    }.ToFrozenSet(StringComparer.Ordinal);

    private const string Ending = "ing";

    /// <returns>Null where the word is no such form.</returns>
    public static string? BaseOf(string word)
    {
        if (word.Length <= Ending.Length + 2 || !word.EndsWith(Ending, StringComparison.Ordinal)) return null;
        var stem = word[..^Ending.Length];
        if (Plain.Contains(stem)) return stem;
        if (Plain.Contains(stem + "e")) return stem + "e";
        return stem[^1] == stem[^2] && Plain.Contains(stem[..^1]) ? stem[..^1] : null;
    }
}
