using System.Collections.Immutable;
using System.Text;
using DxAssistant.Knowledge.Glyphs.Finding;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>
/// Reads a message about a display character by character: "b as in bravo, then a four". Where a code is expected it
/// may take words for characters that anywhere else would be plain talk.
/// </summary>
internal sealed class Speller
{
    private const int LongestCode = 4;

    private static readonly string[] Doubting = ["or", "maybe", "perhaps", "possibly"];

    private readonly ImmutableArray<SpelledWord> _words;
    private readonly CharacterReader _characters;
    private readonly ImmutableArray<SpelledRun>.Builder _runs = ImmutableArray.CreateBuilder<SpelledRun>();
    private readonly StringBuilder _run = new();
    private bool _sure;
    private Rank _rank = Rank.Shown;
    private Rank _runRank;
    private bool _turned;
    private bool _alternatives;
    private bool _strange;

    private Speller(string text)
    {
        _words = SpelledWord.Cut(text);
        _characters = new CharacterReader(_words);
    }

    /// <summary>The code that a message spells.</summary>
    /// <param name="covered">Whether nothing but talk of codes stands beside it.</param>
    /// <returns>Null if it spells none.</returns>
    public static SpelledRun? Read(string text, out bool covered)
    {
        var speller = new Speller(text);
        speller.Spell();
        covered = !speller._strange;
        return speller.Best() is { } best
            ? best with { Text = speller.Doubled(best.Text), Alone = speller.IsAlone(best) }
            : null;
    }

    private bool IsAlone(SpelledRun best) => !_alternatives
        && _runs.Where(run => run.Rank == best.Rank).Select(run => run.Text.ToUpperInvariant())
            .Distinct(StringComparer.Ordinal).Count() == 1;

    private SpelledRun? Best() => _runs.Where(run => run.Rank < Rank.Denied).OrderBy(run => run.Rank)
        .ThenByDescending(run => run.Text.Length > 1).FirstOrDefault();

    // "8 on both digits", "minus sign twice"
    private string Doubled(string code) =>
        code.Length == 1 && _words.Any(word => word.Lower is "both" or "twice" or "each") ? code + code : code;

    private void Spell()
    {
        for (int at = 0; at < _words.Length;)
        {
            string word = _words[at].Lower;
            if (IsSameAgain(at) is { } past) at = past;
            else if (word == "or" && _runs.Count + _run.Length > 0)
            {
                _alternatives = true;
                break;
            }
            else if (word == "(" && _run.Length > 0 && Closing(at) is { } closed) at = closed + 1;
            else if (StartsRank(at, word)) at++;
            else at = TakeAt(at);
        }

        Close();
    }

    // "8 or B", "maybe an 8, maybe a B": another name for the character that was said last.
    private int? IsSameAgain(int at)
    {
        if (_run.Length == 0 || !Doubting.Contains(_words[at].Lower)) return null;
        int next = at + 1;
        while (next < _words.Length
            && _words[next].Lower is "a" or "an" or "the" or "it's" or "be" or "letter" or "number")
            next++;
        return _characters.At(next, "?") is { Text.Length: 1 } other
            && GlyphShapes.Distance(_run[^1], other.Text[0]) <= 1 ? other.End : null;
    }

    private int TakeAt(int at)
    {
        if (_characters.At(at, _run.ToString()) is { } piece)
        {
            Take(piece);
            return _characters.AfterExplanation(piece, _words[at].Lower);
        }

        string word = _words[at].Lower;
        if (word is "now" or "today" or "currently") MarkNow(at);
        if (word is "after" or "behind") _turned = _run.Length == 1;
        else _turned &= TalkOfCodes.IsLink(word);
        if (!TalkOfCodes.IsLink(word) && !_turned) Close();
        if (word == "then") _rank = Rank.Shown;
        _strange |= !TalkOfCodes.IsFrame(word) && word is not ("twice" or "sign" or "signs");
        return at + 1;
    }

    // "says H0 now", "now it's b4"
    private void MarkNow(int at)
    {
        bool told = _run.Length > 0
            && (at + 1 == _words.Length || !_words.Skip(at + 1).Take(3).Any(word => word.IsNumber || word.IsLetter));
        if (told) _runRank = Rank.Now;
        Close();
        if (!told) _rank = Rank.Now;
    }

    private bool StartsRank(int at, string word)
    {
        Rank rank = TalkOfCodes.IsPast(word)
            ? Rank.Before
            : TalkOfCodes.IsDenial(word) && _characters.At(at + 1, "") is not null ? Rank.Denied : Rank.Shown;
        if (rank == Rank.Shown) return false;
        Close();
        _rank = rank;
        return true;
    }

    private void Take(SpelledPiece piece)
    {
        if (piece.Text.Length > 1 && piece.Text == _run.ToString()) return;
        bool dashes = _run.Length > 0 && _run[0] == '-';
        bool full = _run.Length + piece.Text.Length > LongestCode;
        if (_run.Length > 0 && (full || dashes != (piece.Text[0] == '-') || IsWhole(piece.Text)))
            Close(keep: !dashes || _run.Length > 1);
        if (_run.Length == 0) (_runRank, _rank) = (_rank, Rank.Shown);
        _sure |= piece.Sure;
        _run.Insert(_turned ? 0 : _run.Length, piece.Text);
        _turned = false;
    }

    // A letter behind a letter and its number begins another code.
    private bool IsWhole(string next) =>
        char.IsAsciiLetter(_run[0]) && char.IsAsciiDigit(_run[^1]) && char.IsAsciiLetter(next[0]);

    private void Close(bool keep = true)
    {
        if (_run.Length > 0 && keep) _runs.Add(new SpelledRun(_run.ToString(), _sure, _runRank));
        _run.Clear();
        _sure = false;
    }

    private int? Closing(int at)
    {
        for (int end = at + 1; end < _words.Length; end++)
            if (_words[end].Lower == ")") return end;
        return null;
    }
}
