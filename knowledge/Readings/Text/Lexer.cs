namespace DxAssistant.Knowledge.Readings.Text;

/// <summary>Cuts a message into tokens, so that digits inside codes, dates and model numbers are never taken for
/// numbers.</summary>
internal sealed class Lexer
{
    private readonly string _text;
    private readonly List<Token> _tokens = [];
    private int _at;

    private Lexer(string message) => _text = string.Create(message.Length, message, static (folded, source) =>
    {
        for (int i = 0; i < folded.Length; i++)
        {
            folded[i] = Folding.Fold(source[i]);
        }
    });

    public static TokenList Cut(string message)
    {
        var lexer = new Lexer(message);
        while (lexer._at < message.Length)
        {
            lexer.Next();
        }
        return new TokenList(message, lexer._tokens);
    }

    private void Next()
    {
        char c = _text[_at];
        if (c != '\n' && char.IsWhiteSpace(c))
        {
            _at++;
        }
        else if (IsDigit(_at) || (c == '.' && IsDigit(_at + 1) && !IsAlphanumeric(_at - 1)))
        {
            Number();
        }
        else if (char.IsLetter(c))
        {
            Word();
        }
        else
        {
            Add(double.IsNaN(Folding.Fraction(c)) ? TokenKind.Symbol : TokenKind.Fraction, _at, _at + 1);
        }
    }

    private void Number()
    {
        int start = _at;
        int end = NumberShape.End(_text, start);
        int letters = LettersEnd(end);
        if (letters == end || !IsDigit(letters))
        {
            Add(start, end);
        }
        else if (NumberShape.IsLetterForPoint(_text, start, end, out int tail))
        {
            // 4k7: the letter stands where the point would.
            string digits = string.Concat(_text.AsSpan(start, end - start), ".", _text.AsSpan(end + 1, tail - end - 1));
            Add(TokenKind.Number, start, tail, digits);
            Add(TokenKind.Word, tail, tail, _text[end..(end + 1)]);
        }
        else
        {
            Code(start);
        }
    }

    // A comma can part values as well as digits: 1.1,1.2 is two numbers.
    private void Add(int start, int end)
    {
        string all = _text[start..end];
        string[] parts = Numbers.DigitNumber.Values(all).IsEmpty ? all.Split(',') : [all];
        if (parts.Length == 1 || parts.Any(part => Numbers.DigitNumber.Values(part).IsEmpty))
        {
            Add(TokenKind.Number, start, end, smudged: HangsOnWhatIsBefore());
            return;
        }
        for (int i = 0; i < parts.Length; i++)
        {
            Add(TokenKind.Number, start, start + parts[i].Length);
            start += parts[i].Length;
            if (i < parts.Length - 1)
            {
                Add(TokenKind.Symbol, start, ++start);
            }
        }
    }

    // "V1,1" and "temp.24": the comma or point may belong to the number or may not.
    private bool HangsOnWhatIsBefore() => IsLeadingComma() || (_tokens.Count > 1 && _tokens[^1].End == _at
        && _tokens[^1].Glued && ((_tokens[^1].Is(',') && _tokens[^2].Kind == TokenKind.Code)
            || (_tokens[^1].Is('.') && _tokens[^2].Kind != TokenKind.Symbol)));

    // ",8 ohms": eight tenths, or what is left of a list.
    private bool IsLeadingComma() => _tokens.Count > 0 && _tokens[^1].Is(',') && _tokens[^1].End == _at
        && !_tokens[^1].Glued && (_tokens.Count == 1 || !_tokens[^2].IsNumber);

    private void Word()
    {
        int start = _at;
        int end = LettersEnd(start);
        bool tail = end < _text.Length - 1 && "-./_".Contains(_text[end], StringComparison.Ordinal) && IsDigit(end + 1);
        if (IsDigit(end) || (tail && end - start <= 3 && !FollowsNumber(start)))
        {
            Code(start);
        }
        else
        {
            Add(TokenKind.Word, start, end);
        }
    }

    // After a number a short word is its unit (10k/9k), unless it begins the name of a refrigerant (5 R-410A).
    private bool FollowsNumber(int start) => _tokens.Count > 0 && _tokens[^1].IsNumber
        && (_tokens[^1].End == start || _text[start] is not ('r' or 'R'));

    private void Code(int start)
    {
        int end = start;
        while (IsAlphanumeric(end)
            || (end < _text.Length && "-./_".Contains(_text[end], StringComparison.Ordinal) && IsAlphanumeric(end + 1)))
        {
            end++;
        }
        Add(TokenKind.Code, start, end);
    }

    private int LettersEnd(int at)
    {
        while (at < _text.Length
            && (char.IsLetter(_text[at])
            || (_text[at] == '\'' && at + 1 < _text.Length && char.IsLetter(_text[at + 1]))))
        {
            at++;
        }
        return at;
    }

    private void Add(TokenKind kind, int start, int end, string? text = null, bool smudged = false)
    {
        text ??= _text[start..end];
        bool glued = _tokens.Count > 0 && _tokens[^1].End == start;
        _tokens.Add(new Token(kind, text, text.ToLowerInvariant(), start, end - start, glued, smudged));
        _at = end;
    }

    private bool IsDigit(int at) => at >= 0 && at < _text.Length && char.IsAsciiDigit(_text[at]);

    private bool IsAlphanumeric(int at) => at >= 0 && at < _text.Length && char.IsLetterOrDigit(_text[at]);
}
