namespace DxAssistant.Knowledge.Glyphs;

/// <summary>How well a code of a series fits what was said; better ones first.</summary>
public enum GlyphFit
{
    /// <summary>The same characters.</summary>
    Exact,

    /// <summary>Characters that light the same segments, or the same number with a leading zero.</summary>
    SameShape,

    /// <summary>One segment of one digit differs: misread, or a segment that does not light.</summary>
    OneSegment,

    /// <summary>What was seen is the code with two segments of one digit dark.</summary>
    BrokenDigit,
}
