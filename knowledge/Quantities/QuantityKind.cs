namespace DxAssistant.Knowledge.Quantities;

/// <summary>What a number measures. Kinds that convert differently are different kinds.</summary>
/// <remarks>The SI base of each kind, in which <see cref="Unit.ToSi"/> answers, stands beside it.</remarks>
public enum QuantityKind
{
    /// <summary>Base: Ω.</summary>
    Resistance,

    /// <summary>Base: Ω/m.</summary>
    ResistancePerLength,

    /// <summary>Base: V.</summary>
    Voltage,

    /// <summary>Base: A.</summary>
    Current,

    /// <summary>Base: W.</summary>
    Power,

    /// <summary>Base: F.</summary>
    Capacitance,

    /// <summary>Base: F·V/A, which is the second; what a current and a voltage are multiplied with to give a
    /// capacitance.</summary>
    CapacitanceFactor,

    /// <summary>Base: Hz.</summary>
    Frequency,

    /// <summary>Base: r/min.</summary>
    RotationalSpeed,

    /// <summary>Base: °C.</summary>
    Temperature,

    /// <summary>Base: K. Has no zero point, so 1 °F of it is 5/9 K.</summary>
    TemperatureDifference,

    /// <summary>Base: 1/K.</summary>
    InverseTemperature,

    /// <summary>Base: Pa above the local atmosphere.</summary>
    GaugePressure,

    /// <summary>Base: Pa above a perfect vacuum.</summary>
    AbsolutePressure,

    /// <summary>Base: Pa. A pressure difference, or a pressure whose zero was not said.</summary>
    Pressure,

    /// <summary>Base: Pa/s.</summary>
    PressureRate,

    /// <summary>Base: s.</summary>
    Time,

    /// <summary>Base: m.</summary>
    Length,

    /// <summary>Base: m².</summary>
    Area,

    /// <summary>Base: m³.</summary>
    Volume,

    /// <summary>Base: kg.</summary>
    Mass,

    /// <summary>Base: kg/s.</summary>
    MassFlow,

    /// <summary>Base: kg/m.</summary>
    MassPerLength,

    /// <summary>Base: kg/mol.</summary>
    MolarMass,

    /// <summary>Base: kg/m³.</summary>
    Density,

    /// <summary>Base: m³/s.</summary>
    AirFlow,

    /// <summary>Base: 1 (so 5 % is 0.05).</summary>
    Ratio,

    /// <summary>Base: kg of water to 1 kg of dry air.</summary>
    HumidityRatio,

    /// <summary>Base: J/kg.</summary>
    SpecificEnthalpy,

    /// <summary>Base: m³ to 1 kg of dry air.</summary>
    SpecificVolume,

    /// <summary>Base: J/(kg·K).</summary>
    SpecificHeat,

    /// <summary>Base: J/(m³·K).</summary>
    VolumetricHeatCapacity,

    /// <summary>Base: J/m³.</summary>
    VolumetricHeat,

    /// <summary>Base: 1, a whole number or a plain number.</summary>
    Count,

    /// <summary>Base: the gauge number of American wire sizes.</summary>
    WireGauge,
}
