namespace DxAssistant.Knowledge.Readings.Numbers;

/// <summary>How a number was given, where it matters to what it can be.</summary>
internal enum NumberManner
{
    /// <summary>Digits, or words with one meaning.</summary>
    Digits,

    /// <summary>"Two thirty": 230 of volts, but of ohms perhaps 2.30. The values are the small and the great
    /// one.</summary>
    ShortHundred,

    /// <summary>"10 200": ten thousand two hundred, or 10 and 200.</summary>
    SpaceGroup,
}
