using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Benchmarks.Ratios;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>The reading parser on messages of growing length and difficulty.</summary>
internal sealed class ReadingGroup : RatioGroup
{
    private static readonly ReadingContext Resistance = ReadingContext.For(QuantityKind.Resistance);

    public override string Name => "readings";

    protected override string Title => "Cost of reading a message";

    protected override Workload Baseline =>
        new("parsing the number 10.2 alone, boxed", () => double.Parse("10.2", CultureInfo.InvariantCulture));

    protected override ImmutableArray<Workload> Workloads =>
    [
        Of("10.2k"), Of("2k1"), Of("OL"), Of("about 10.2 kΩ at 24 °C"), Of("twelve point five kilo ohms"),
        Of("U-V 1.1, V-W 1.1, U-W 1.2 ohms"), Of("L1-L2 240 L1-G 120 L2-G 119"),
        Of(Long(1)), Of(Long(4)), Of(Long(16)),
    ];

    private static string Long(int times) => string.Concat(Enumerable.Repeat(
        "the room sensor was unplugged and it reads 2.1k at 24C, then I cleaned the filter and the coil. ", times));

    private static Workload Of(string text)
    {
        var name = text.Length <= 60 ? $"`{text}`" : string.Create(
            CultureInfo.InvariantCulture, $"a report of {text.Length} characters");
        return new Workload(name, () => ReadingParser.Parse(text, Resistance));
    }
}
