using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Whether the words around a bare number let it be a reading.</summary>
internal sealed class Surroundings
{
    private const int CueReach = 3;

    private readonly TokenList _tokens;

    public Surroundings(TokenList tokens, bool[] taken, IEnumerable<Mention> mentions)
    {
        _tokens = tokens;
        var covered = (bool[])taken.Clone();
        foreach (Mention mention in mentions)
        {
            Array.Fill(covered, true, mention.First, mention.End - mention.First);
        }
        IsPlain = Enumerable.Range(0, tokens.Count).All(at => covered[at] || tokens[at].Kind == TokenKind.Symbol
            || Words.Filler.Contains(tokens[at].Lower));
    }

    /// <summary>The message holds nothing but values, labels and words of a plain report.</summary>
    public bool IsPlain { get; }

    /// <summary>A word right before says that it was read: "reads about 72".</summary>
    public bool HasCue(Mention mention)
    {
        int at = mention.First - 1;
        for (int reach = 0; reach < CueReach
            && (Words.Approximate.Contains(_tokens[at].Lower) || _tokens[at].IsOneOf("~≈:=")); reach++)
        {
            at--;
        }
        return Words.Cue.Contains(_tokens[at].Lower);
    }

    /// <summary>The number stands behind "at", as the temperature does in "2.1k at 24".</summary>
    public bool IsAt(Mention mention) => _tokens[mention.First - 1].Is("at") || _tokens[mention.First - 1].Is('@');
}
