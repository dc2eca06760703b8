using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Finds the code in a message, and leaves ordinary words, refrigerants, terminals and readings
/// alone.</summary>
internal static class CodeFinder
{
    private static readonly string[] Refrigerants = ["22", "32", "134", "290", "404", "407", "410", "448", "449", "454",
        "507", "600"];

    private static readonly string[] Substances = ["h2o", "co2", "a2l", "n2", "o2", "3d"];

    private static readonly string[] Connectors = ["CN", "SW", "JP", "TB", "PL", "IC", "DS", "ML"];

    private static readonly string[] Hardware = ["screw", "screws", "bolt", "bolts", "nut", "nuts", "wire", "wires",
        "connector", "plug", "terminal", "breaker", "fuse", "sensor", "refrigerant", "refrigerants", "reads",
        "measures", "measured"];

    // Words that go on with the sentence and are not what the number counts: "error 88 after a power cut".
    private static readonly string[] GoOn = ["after", "before", "since", "when", "while", "because", "but", "or",
        "whenever", "every", "during", "if", "until", "only"];

    /// <summary>The code; null if there is none. One that is called a code comes before one that is not.</summary>
    public static CodeRun? In(TokenList tokens)
    {
        CodeRun? best = null;
        int bestCue = 0;
        for (int at = 0; at < tokens.Count;)
        {
            CodeRun? run = RunReader.At(tokens, at);
            int cue = run is null ? 0 : Cues.Beside(tokens, run);
            if (run is not null && IsCode(tokens, run, cue) && (best is null || cue > bestCue))
            {
                (best, bestCue) = (run, cue);
            }
            at = run is not null && (run == best || run.Typed) ? run.End : at + 1;
        }
        return best;
    }

    private static bool IsCode(TokenList tokens, CodeRun run, int cue)
    {
        bool whole = IsWhole(tokens, run);
        string lower = run.Text.ToLowerInvariant();
        if (Substances.Contains(lower) || IsRefrigerant(tokens, run) || (!whole && IsReading(tokens, run)))
        {
            return false;
        }
        if (run.IsNumber)
        {
            return run.Text.Length <= 3 && !IsCounted(tokens, run)
                && (whole || (cue == 2 && !Cues.IsBlinkCode(tokens, run.First))
                || (cue == 1 && run.Text.Length == 2 && Cues.SpeakOfDisplay(tokens)));
        }
        // "on a two-digit display": an article before a number is a code only right behind a word that says so.
        bool article = tokens[run.First].Lower is "a" or "i" && !run.Typed
            && (!Cues.IsRightBefore(tokens, run.First) || char.IsAsciiLetter(run.Text[1..].FirstOrDefault('0')));
        bool compound = tokens[run.End].Is('-') && tokens[run.End].Glued && tokens[run.End + 1].IsWord
            && tokens[run.End + 1].Glued;
        if (!whole && (article || compound))
        {
            return false;
        }
        bool quoted = tokens[run.First - 1].IsOneOf("\"'") && tokens[run.End].IsOneOf("\"'");
        return run.Text.Length > 1 && (whole || quoted || cue > 0 || (run.Plain && !IsHardware(tokens, run)));
    }

    private static bool IsWhole(TokenList tokens, CodeRun run)
    {
        const int longestFrame = 12;
        return tokens.Count <= longestFrame
            && Enumerable.Range(0, tokens.Count).All(at => (at >= run.First && at < run.End)
            || Cues.IsFrame(tokens[at]));
    }

    private static bool IsRefrigerant(TokenList tokens, CodeRun run)
    {
        string digits = new([.. run.Text.Where(char.IsAsciiDigit)]);
        return Refrigerants.Contains(digits) && char.ToUpperInvariant(run.Text[0]) == 'R'
            && tokens[run.First].Lower[0] == 'r';
    }

    // "5C", "10 k", "24 V 2 A", "R to S 1.2": numbers with units and the terminals they were read at.
    private static bool IsReading(TokenList tokens, CodeRun run)
    {
        Token before = tokens[run.First - 1];
        bool afterNumber = before.IsNumber && char.IsAsciiLetter(run.Text[0]);
        bool afterLetter = before.Is("to") || before.IsOneOf("-/")
            || before.Lower is "between" or "across" or "volts" or "leg";
        bool fraction = tokens[run.End].IsOneOf(".,") && tokens[run.End].Glued && tokens[run.End + 1].IsNumber
            && tokens[run.End + 1].Glued;
        bool unit = char.IsAsciiDigit(run.Text[0]) && run.Text.Length > 1
            && "VCFAKWRSM".Contains(char.ToUpperInvariant(run.Text[^1]), StringComparison.Ordinal)
            && Cues.Beside(tokens, run) < 2;
        bool line = run.Text.ToUpperInvariant() is "L1" or "L2" or "L3" or "T1" or "T2" or "T3"
            && (tokens[run.End].IsNumber || tokens[run.End].IsOneOf("-/=:") || tokens[run.End].Lower is "to" or "and"
                || Cues.Beside(tokens, run) == 0);
        return afterNumber || afterLetter || fraction || unit || line;
    }

    private static bool IsCounted(TokenList tokens, CodeRun run) =>
        tokens[run.End].Glued && tokens[run.End].IsOneOf("%°.:/")
        || (tokens[run.End].IsWord && !Cues.IsFrame(tokens[run.End]) && !GoOn.Contains(tokens[run.End].Lower))
        || tokens[run.End].Lower is "times" or "blinks" or "flashes" or "x" || tokens[run.End].IsOneOf("%°")
        || tokens[run.First - 1].IsOneOf("-/.,:") && tokens[run.First].Glued && tokens[run.First - 1].Glued;

    private static bool IsHardware(TokenList tokens, CodeRun run)
    {
        string upper = run.Text.ToUpperInvariant();
        return Connectors.Any(prefix => upper.StartsWith(prefix, StringComparison.Ordinal))
            || Hardware.Contains(tokens[run.End].Lower)
            || upper[0] is 'K' or 'M' or 'W' or 'X'
                || tokens[run.First - 1].Lower is "connector" or "terminal" or "model" or "plug" or "pin" or "size"
                    or "type" or "serial" or "class";
    }
}
