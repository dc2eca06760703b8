namespace DxAssistant.Knowledge.Readings.Text;

/// <summary>What a token is made of.</summary>
internal enum TokenKind
{
    /// <summary>Letters.</summary>
    Word,

    /// <summary>Digits with their separators; its text has the fraction in <c>4k7</c> written out as
    /// <c>4.7</c>.</summary>
    Number,

    /// <summary>A fraction in one character: ½.</summary>
    Fraction,

    /// <summary>Letters and digits mixed: E5, R-410A, a model number.</summary>
    Code,

    /// <summary>Anything else, one character; a line break too.</summary>
    Symbol,
}
