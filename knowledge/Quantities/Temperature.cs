namespace DxAssistant.Knowledge.Quantities;

/// <summary>A temperature. The default value is absolute zero.</summary>
/// <remarks>Two temperatures subtract to a <see cref="TemperatureDelta"/>, which has no zero point.</remarks>
public readonly record struct Temperature : IComparable<Temperature>
{
    private const double IcePoint = 273.15;
    private Temperature(double kelvins) => Kelvins = kelvins;

    /// <summary>Kelvins (K), 0 or more.</summary>
    public double Kelvins { get; }

    /// <summary>Degrees Celsius (°C), −273.15 or more.</summary>
    public double Celsius => Kelvins - IcePoint;

    /// <summary>Makes a temperature from kelvins.</summary>
    /// <param name="kelvins">K, 0 to 10,000, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kelvins"/> is outside that range or
    /// NaN.</exception>
    public static Temperature FromKelvins(double kelvins) => new(Require.InRange(kelvins, 0, 10_000, "K"));

    /// <summary>Makes a temperature from degrees Celsius.</summary>
    /// <param name="degrees">°C, −273.15 to 9,000, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="degrees"/> is outside that range or
    /// NaN.</exception>
    public static Temperature FromCelsius(double degrees) =>
        new(Require.InRange(degrees, -IcePoint, 9_000, "°C") + IcePoint);

    /// <summary>Makes a temperature from degrees Fahrenheit.</summary>
    /// <param name="degrees">°F, −459.67 to 10,000, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="degrees"/> is outside that range or
    /// NaN.</exception>
    public static Temperature FromFahrenheit(double degrees) =>
        new((Require.InRange(degrees, -459.67, 10_000, "°F") + 459.67) * 5 / 9);

    public static TemperatureDelta operator -(Temperature left, Temperature right) =>
        TemperatureDelta.FromKelvins(left.Kelvins - right.Kelvins);

    public static bool operator <(Temperature left, Temperature right) => left.Kelvins < right.Kelvins;
    public static bool operator >(Temperature left, Temperature right) => left.Kelvins > right.Kelvins;
    public static bool operator <=(Temperature left, Temperature right) => left.Kelvins <= right.Kelvins;
    public static bool operator >=(Temperature left, Temperature right) => left.Kelvins >= right.Kelvins;
    public int CompareTo(Temperature other) => Kelvins.CompareTo(other.Kelvins);

    /// <summary>The same as the minus operator.</summary>
    public TemperatureDelta Subtract(Temperature other) => this - other;
}
