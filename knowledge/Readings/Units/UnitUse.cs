namespace DxAssistant.Knowledge.Readings.Units;

/// <summary>When a spelling counts as a unit; many are everyday words or letters as well.</summary>
internal enum UnitUse
{
    Always,

    /// <summary>Only hard against the number: 10R.</summary>
    Glued,

    /// <summary>The letter A, which is also an article.</summary>
    Article,

    /// <summary>Only if that quantity was asked; otherwise it counts something else: 5 min, 20 ft, 32 oz.</summary>
    IfAsked,

    /// <summary>Pounds: of pressure if a pressure is spoken of, otherwise a weight.</summary>
    Pounds,

    /// <summary>A bare k, which is kΩ by trade custom but also the start of kV and kPa, and the kelvin.</summary>
    LoneKilo,

    /// <summary>A bare m or M.</summary>
    LoneMega,

    /// <summary>A spelling in which m can be milli or mega.</summary>
    MilliOrMega,
}
