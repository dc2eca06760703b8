namespace DxAssistant.Knowledge.Readings.Text;

/// <summary>The tokens of a message; outside its ends lies <see cref="Token.None"/>.</summary>
internal sealed class TokenList(string text, IReadOnlyList<Token> tokens)
{
    public string Message => text;

    public int Count => tokens.Count;

    /// <summary>How often a token was looked at: the work done on the message.</summary>
    public long Looks { get; private set; }

    public Token this[int at]
    {
        get
        {
            Looks++;
            return at >= 0 && at < tokens.Count ? tokens[at] : Token.None;
        }
    }

    /// <summary>The stretch of the message from one token to before another.</summary>
    public TextSpan Span(int first, int end) =>
        end <= first ? new TextSpan(0, 0)
            : new TextSpan(tokens[first].Start, tokens[end - 1].End - tokens[first].Start);
}
