namespace DxAssistant.Knowledge.Readings;

/// <summary>Which units a bare temperature or pressure is in where the technician works.</summary>
public enum Market
{
    /// <summary>°F and psi.</summary>
    FahrenheitPsi,

    /// <summary>°C and kPa.</summary>
    CelsiusKilopascal,
}
