namespace DxAssistant.Knowledge.Readings;

/// <summary>Why a message could not simply be taken as readings; each is the key of a phrase.</summary>
public static class ReadingReason
{
    /// <summary>There is no number and no meter word in it.</summary>
    public const string NoReading = "no-reading";

    /// <summary>Its numbers are what should be read, not what was.</summary>
    public const string OnlyExpected = "only-expected";

    /// <summary>A number without a unit, and nothing that says which.</summary>
    public const string NoUnit = "no-unit";

    /// <summary>The unit can be two: °C or °F, mΩ or MΩ.</summary>
    public const string WhichUnit = "which-unit";

    /// <summary>The comma, point or space can part thousands or a fraction.</summary>
    public const string Separator = "separator";

    /// <summary>The meter cannot have shown this here.</summary>
    public const string Impossible = "impossible";

    /// <summary>Two ends instead of one value.</summary>
    public const string Range = "range";

    /// <summary>Only that it is more or less than something.</summary>
    public const string Limit = "limit";

    /// <summary>A dash that is a minus or parts words.</summary>
    public const string Sign = "sign";

    /// <summary>Several values, or fewer than the form has lines, and nothing that says which is which.</summary>
    public const string WhichOne = "which-one";

    /// <summary>A lone 1, which some meters show for over range.</summary>
    public const string OverRange = "over-range";

    /// <summary>A number that may belong to something else in the sentence.</summary>
    public const string Unsure = "unsure";
}
