using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Inputs that several judges need.</summary>
internal static class Need
{
    public static readonly InputNeed Meter = new("meter", InputForm.Meter, null, true,
        "what the meter's maker promises: P % + N × RES UNIT, or ± X UNIT");

    public static readonly InputNeed Thermometer =
        new("thermometer", InputForm.Number, QuantityKind.TemperatureDifference, true,
            "limit of error of the thermometer");

    public static readonly InputNeed Refrigerant = new(
        "refrigerant", InputForm.Refrigerant, null, true, "name of the refrigerant");

    public static readonly InputNeed Gauge = new("gauge", InputForm.Number, QuantityKind.Pressure, true,
        "limit of error of the gauge");

    public static readonly InputNeed Altitude =
        new("altitude", InputForm.Number, QuantityKind.Length, false,
            "of the site; without it the air pressure is uncertain");

    public static InputNeed Number(string name, QuantityKind? kind, string meaning, bool required = true) =>
        new(name, InputForm.Number, kind, required, meaning);
}
