namespace DxAssistant.Knowledge.Content.Model;

/// <summary>The units that people at the unit read in.</summary>
public enum Market
{
    /// <summary>°C and kPa.</summary>
    Metric,

    /// <summary>°F and psig.</summary>
    InchPound,
}
