using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>Published curves of common thermistors.</summary>
/// <remarks>
/// Sources: AT, a table in a public code repository; 8016, thermistor maker's data book, standardized R/T
/// characteristics; J, table in a data-logger manual and the Steinhart–Hart coefficients that go with it (from memory).
/// </remarks>
public static class PublishedCurves
{
    /// <summary>°C : kΩ. 10 kΩ at 25 °C, beta 25/85 = 3435 K.</summary>
    private const string At =
        "-50:329.5 -40:188.5 -30:111.3 -20:67.77 -10:42.47 0:27.28 10:17.96 20:12.09 25:10.00 30:8.313 40:5.827 50:4.160 "
        + "60:3.020 70:2.228 80:1.668 90:1.266 100:0.9731 110:0.7576";

    /// <summary>°C : R/R25. Beta 25/100 = 3988 K.</summary>
    private const string Ratio8016 =
        "-50:67.01 -40:33.65 -30:17.7 -20:9.707 -10:5.533 0:3.265 10:1.99 20:1.249 25:1.0000 30:0.8057 40:0.5327 50:0.3603 "
        + "60:0.2488 70:0.1752 80:0.1258 90:0.09177 100:0.0680 110:0.05112 120:0.03893";

    /// <summary>Names of the curves, ordinal.</summary>
    public static ImmutableArray<string> Names { get; } = ["8016", "AT-10k-3435", "J-10k"];

    /// <summary>True when the curve is a ratio and needs the resistance at 25 °C.</summary>
    public static bool NeedsRoomResistance(string name) => name == "8016";

    /// <summary>The name of a curve from how it is written; null when there is no such curve.</summary>
    public static string? NameOf(string written)
    {
        var family = written.Trim().Split('-')[0];
        return Names.FirstOrDefault(name => name.Split('-')[0].Equals(family, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>A curve by its name.</summary>
    /// <param name="room">Resistance at 25 °C, above 0.</param>
    /// <exception cref="ArgumentException">There is no curve of that name.</exception>
    public static SensorCurve Get(string name, Resistance room) => name switch
    {
        "AT-10k-3435" => Table(At, room.Ohms / 10),
        "8016" => Table(Ratio8016, room.Ohms),
        "J-10k" => SensorCurve.SteinhartHart(
            1.129241e-3, 2.341077e-4, 8.775468e-8, Temperature.FromCelsius(-50), Temperature.FromCelsius(110)),
        _ => throw new ArgumentException($"there is no curve {name}", nameof(name)),
    };

    private static SensorCurve Table(string rows, double ohmsOfOne)
    {
        var points = rows.Split(' ').Select(row => row.Split(':'))
            .Select(cells => new SensorPoint(Number(cells[0]), Number(cells[1]) * ohmsOfOne));
        return SensorCurve.TryFromTable(points, out var curve, out var problem) ? curve
            : throw new InvalidOperationException(problem);
    }

    private static double Number(string cell) => double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture);
}
