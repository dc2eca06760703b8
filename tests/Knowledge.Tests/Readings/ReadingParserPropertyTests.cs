using System.Globalization;
using CsCheck;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class ReadingParserPropertyTests
{
    private static readonly string[] Pieces =
    [
        "10.2", "1,200", "1.200", "k", "K", "ohms", "°", "C", "F", "-", "−", "to", "between", "and", "U", "V", "W",
            "L1", "OL", "O", ".", "L", "open", "short", "half", "a",
        "one", "twenty", "hundred", "thousand", "million", "point", "oh", "below", "zero", "psi", "p", "s", "i", "at",
            "suction", "all", "three", "1/2", "½", "~", "<", "±", ":", "=",
        "E5", "R-410A", "4k7", "5/12/2026", "10:30", ",", ";", "\n", "?", "'", "\"", "%", "#", "no", "not", "should",
            "be", "same", "on", "each", "\u0000", "😀", "٣", "1e400", "9999999999999999999999",
    ];

    private static readonly string[] Contexts =
        ["-", "us", "eu", "sensor", "windings", "lines", "volts", "temperature-us", "gauges-us", "pressure",
            "resistance", "capacitance", "temperature", "superheat", "humidity", "time",
            "room-sensor-us", "superheat-form-us", "split-us", "bus", "diodes", "signal", "celsius-field-us"];

    private static readonly Gen<string> Message = Gen.OneOf(
        Gen.String,
        Gen.OneOf(Pieces).Array[0, 14].Select(pieces => string.Join(' ', pieces)),
        Gen.OneOf(Pieces).Array[0, 14].Select(string.Concat));

    [Fact]
    public void Parse_AnyText_GivesAResultWithFiniteValues() =>
        Gen.Select(Message, Gen.OneOf(Contexts)).Sample((message, context) =>
            ReadingParser.Parse(message, ReadingTable.Context(context)) switch
            {
                ReadingResult.Readings taken => taken.List.Length > 0 && taken.List.Length == taken.At.Length
                    && taken.List.All(reading => double.IsFinite(reading.Value))
                        && taken.At.All(at => at.Start >= 0 && at.Length > 0 && at.End <= message.Length),
                ReadingResult.AskBack ask =>
                    ask.Meanings.All(meaning => meaning.Readings.All(reading => double.IsFinite(reading.Value))),
                ReadingResult.NotUnderstood none => none.Reason.Length > 0,
                _ => false,
            }, iter: 5_000);

    [Fact]
    public void Parse_PrintedReading_GivesItsValueBack()
    {
        Unit[] units =
        [
            Units.Ohm, Units.KiloOhm, Units.MegaOhm, Units.Volt, Units.MilliVolt, Units.Ampere, Units.MilliAmpere,
                Units.MicroAmpere, Units.MicroFarad, Units.NanoFarad,
            Units.Hertz, Units.Celsius, Units.Fahrenheit, Units.PsiGauge, Units.KiloPascal, Units.Bar, Units.Watt,
                Units.KiloWatt, Units.Percent, Units.MicronOfMercury,
        ];
        // Two decimals at most: three behind a separator can be thousands, and are asked back.
        Gen.Select(Gen.Int[1, 99_999], Gen.OneOf(units), Gen.OneOf("", " "),
            Gen.OneOf("", "about ", "it reads ")).Sample((hundredths, unit, space, before) =>
        {
            double value = unit == Units.Percent ? hundredths / 1000.0 : hundredths / 100.0;
            string message = before + value.ToString("0.##", CultureInfo.InvariantCulture) + space + unit.Symbol;
            double printed = double.Parse(value.ToString("0.##", CultureInfo.InvariantCulture),
                CultureInfo.InvariantCulture);
            // "410A" hard together is a refrigerant.
            bool refrigerant = unit == Units.Ampere && space.Length == 0 && printed % 1 == 0;
            return printed == 0 || refrigerant || ReadingParser.Parse(message,
                ReadingContext.None) is ReadingResult.Readings { List: [var reading], Unclear: null }
                && reading.Unit.Symbol == unit.Symbol
                    && Math.Abs(reading.Value - unit.ToSi(printed)) <= 1e-12 * Math.Abs(unit.ToSi(printed));
        }, iter: 5_000);
    }

    [Theory]
    [InlineData("10k ")]
    [InlineData("1 ")]
    [InlineData("118 121 ")]
    [InlineData("1,1,")]
    [InlineData("9")]
    [InlineData("one ")]
    [InlineData("twenty hundred and ")]
    [InlineData("1-")]
    [InlineData("U-V 1.1 ")]
    [InlineData("E5.")]
    [InlineData("p . s . i ")]
    [InlineData("at at not ")]
    [InlineData("~ about ")]
    [InlineData("suction and ")]
    [InlineData("1/2/")]
    [InlineData("1 to ")]
    [InlineData("((((")]
    public void Parse_LongMessage_TakesWorkInProportion(string piece)
    {
        ReadingContext context = ReadingTable.Context("windings");
        string Repeated(int length) => string.Concat(Enumerable.Repeat(piece, length / piece.Length));
        ReadingParser.Parse(Repeated(3_000), context, out long some);
        ReadingParser.Parse(Repeated(30_000), context, out long tenTimes);
        Assert.InRange(tenTimes, 0, 11 * some + 1_000);
    }

    [Fact]
    public void Parse_HundredThousandCharacters_ReadsThemAll()
    {
        string message = string.Concat(Enumerable.Repeat("10k, ", 20_000));
        var taken = Assert.IsType<ReadingResult.Readings>(ReadingParser.Parse(message, ReadingContext.None));
        Assert.Equal(20_000, taken.List.Length);
    }
}
