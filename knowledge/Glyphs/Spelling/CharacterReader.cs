using System.Collections.Immutable;
using DxAssistant.Knowledge.Glyphs.Finding;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>Reads the characters that begin at a word of a message about a code.</summary>
internal sealed class CharacterReader(ImmutableArray<SpelledWord> words)
{
    private const int MostDigits = 3;

    private SpelledWord this[int at] => at >= 0 && at < words.Length ? words[at] : SpelledWord.None;

    /// <summary>The characters at a word; null if none are meant there.</summary>
    /// <param name="run">What was spelled right before.</param>
    public SpelledPiece? At(int at, string run) =>
        Dashes(at, run) ?? Multiplied(at, run) ?? Figures(at, run) ?? Letter(at, run);

    /// <summary>
    /// The word after "as in bravo" behind a letter; without such an explanation the word after the letter.
    /// </summary>
    public int AfterExplanation(SpelledPiece piece, string said)
    {
        int at = piece.End;
        if (piece.Text.Length != 1 || !char.IsAsciiLetter(piece.Text[0])) return at;
        at += this[at].Lower is "," ? 1 : 0;
        at += this[at].Lower is "that's" or "thats" or "is" ? 1 : 0;
        int word = (this[at].Lower, this[at + 1].Lower) switch
        {
            ("as" or "like", "in") => at + 2,
            ("as" or "like" or "for" or "in", _) => at + 1,
            _ => -1,
        };
        char letter = char.ToLowerInvariant(piece.Text[0]);
        bool explains = word > 0 && this[word].Lower.Length > 1 && this[word].Lower[0] == letter
            && this[word].Lower != said;
        return explains ? word + 1 : piece.End;
    }

    private SpelledPiece? Dashes(int at, string run)
    {
        if (run.Length > 0 && run[0] != '-') return null;
        int count = SpelledCharacters.Digit(this[at].Lower) is { Length: 1 } digit
            ? digit[0] - '0'
            : this[at].Lower is "double" or "couple" or "pair" ? 2 : 0;
        int noun = at + (count > 0 ? 1 : 0);
        while (this[noun].Lower is "little" or "short" or "small" or "horizontal" or "middle" or "of" or "straight"
            && noun > at)
            noun++;
        bool sign = this[noun].Lower is "-" or "–" or "—" or "dash" or "hyphen" or "minus";
        bool several = this[noun].Lower is "dashes" or "hyphens" or "minuses"
            || (this[noun].Lower is "lines" or "bars" or "strokes" && count is 2 or 3 or 4);
        if (!sign && !several) return null;
        if (sign && count == 0 && this[noun + 1] is { Glued: true, Lower: "-" or "–" or "—" })
            return new SpelledPiece("--", noun + 2, true);
        int shown = count is >= 2 and <= 4 ? count : several ? 2 : count > 1 ? 0 : 1;
        return shown == 0 ? null : new SpelledPiece(new string('-', shown), noun + 1, true);
    }

    private SpelledPiece? Multiplied(int at, string run)
    {
        int count = this[at].Lower switch { "double" or "two" or "both" => 2, "triple" or "three" => 3, _ => 0 };
        if (count == 0) return null;
        if (this[at + 1].Lower is "eights" || (this[at + 1].Lower == "8" && this[at + 2].Lower == "s"))
            return new SpelledPiece(new string('8', count), at + 2, true);
        if (this[at].Lower is not ("double" or "triple")) return null;
        return (Figures(at + 1, run) ?? Letter(at + 1, "?")) is { Text.Length: 1 } one
            ? one with { Text = new string(one.Text[0], count), Sure = true }
            : null;
    }

    private SpelledPiece? Figures(int at, string run)
    {
        SpelledWord word = this[at];
        if (word.IsNumber) return word.Text.Length <= MostDigits ? new SpelledPiece(word.Text, at + 1, true) : null;
        if (SpokenCharacters.Ten(word.Lower) is { } ten)
        {
            int ones = at + (this[at + 1].Lower == "-" ? 2 : 1);
            return SpelledCharacters.Digit(this[ones].Lower) is { Length: 1 } one && one != "0"
                ? new SpelledPiece(ten + one, ones + 1, true) : new SpelledPiece(ten + "0", at + 1, true);
        }

        if (word.Lower == "o" && this[at - 1].Lower is "letter") return null;
        string? digit = word.Lower == "o" ? "0" : SpelledCharacters.Digit(word.Lower);
        return digit is not null && (SpelledCharacters.IsSure(word.Lower) || IsDigitHere(at, run))
            ? new SpelledPiece(digit, at + 1, SpelledCharacters.IsSure(word.Lower))
            : null;
    }

    // "for" is a four behind a letter, "ate" an eight beside another character; "oh" begins a code or goes on with it.
    private bool IsDigitHere(int at, string run)
    {
        bool last = at + 1 == words.Length || (!Begins(at + 1) && TalkOfCodes.IsFrame(this[at + 1].Lower));
        if (this[at].Lower is "o" or "oh" or "owe" or "ate")
            return run.Length > 0 ? run.Any(char.IsAsciiLetterOrDigit) : Begins(at + 1);
        return run.Length > 0 && char.IsAsciiLetter(run[^1]) && !run.Any(char.IsAsciiDigit) && (last || Begins(at + 1));
    }

    private SpelledPiece? Letter(int at, string run)
    {
        SpelledWord word = this[at];
        bool named = TalkOfCodes.IsCase(this[at - 1].Lower);
        if (word.IsLetter) return IsLetterHere(at, run, named)
            ? new SpelledPiece(word.Text, at + 1, named || word.Lower is not ("a" or "i"))
            : null;
        bool typed = word.Text.Length is 2 or 3 && word.Text.All(char.IsUpper);
        if (!typed && SpelledCharacters.Letter(word.Lower) is { } letter)
            return SpelledCharacters.IsSure(word.Lower) || named || IsNamedHere(at, run)
                ? Repeated(word, letter, at)
                : null;
        bool shown = word.Text.Length is 2 or 3
            && word.Text.All(c => char.IsAsciiLetter(c) && !GlyphShapes.ShapesOf(c).IsEmpty);
        bool plain = !EverydayWords.Has(word.Lower) && !TalkOfCodes.IsFrame(word.Lower);
        return shown && (plain || word.IsTyped) ? new SpelledPiece(word.Text, at + 1, plain) : null;
    }

    // "ee" alone is typed twice; "ee five" is the name of the letter.
    private SpelledPiece Repeated(SpelledWord word, string letter, int at) =>
        word.Lower is "ee" && !Begins(at + 1) && words.Length == 1
            ? new SpelledPiece("EE", at + 1, true)
            : new SpelledPiece(letter, at + 1, SpelledCharacters.IsSure(word.Lower));

    private bool IsLetterHere(int at, string run, bool named)
    {
        if (GlyphShapes.ShapesOf(this[at].Text[0]).IsEmpty) return false;
        bool glued = this[at].Glued && run.Length > 0 && !TalkOfCodes.IsLink(this[at - 1].Lower);
        bool next = Begins(at + 1);
        return this[at].Lower switch
        {
            "a" =>
                named || glued || (run.Length > 0 ? !next
                    && this[at + 1].Lower is "" or "." or "!" or "?" or "flashing" or "steady" or "code"
                    : next && !TalkOfCodes.IsCase(this[at + 1].Lower)
                        && (this[at].Text == "A" || this[at + 1].Glued
                            || (this[at - 1].Lower is "" or "code" or "error" && !this[at + 1].IsLetter
                                && !HasOtherArticle(at)))),
            "i" => named || glued || run.Length > 0,
            "s" or "t" or "d" or "m" => this[at - 1].Lower is not "'",
            _ => true,
        };
    }

    private bool HasOtherArticle(int at) =>
        Enumerable.Range(0, words.Length).Any(other => other != at && words[other].Lower is "a" or "an");

    // "see four", "five you", "see el": a name that is an everyday word, right beside another character.
    private bool IsNamedHere(int at, string run) => run.Length > 0
        ? at + 1 == words.Length || Begins(at + 1)
            || this[at + 1].Lower is "." or "," or "flashing" or "steady" or "code" or "error" or "blinking"
        : Begins(at + 1) && !this[at + 1].IsLetter && !IsInCapitals(at + 1);

    private bool IsInCapitals(int at) => this[at].Text.Length > 1 && this[at].Text.All(char.IsUpper);

    // Whether a character hardly to be mistaken begins at a word; little words before it are passed over.
    private bool Begins(int at)
    {
        while (this[at].Lower is "letter" or "number" or "digit" or "," or "-" or "and" or "then") at++;
        SpelledWord word = this[at];
        return (word.IsNumber && word.Text.Length <= MostDigits) || (word.IsLetter && word.Lower is not "i")
            || SpelledCharacters.Digit(word.Lower) is not null || SpelledCharacters.IsSure(word.Lower)
            || (SpelledCharacters.Letter(word.Lower) is not null && at + 1 == words.Length);
    }
}
