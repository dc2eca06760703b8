using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>Three windings in star, seen between terminals: each reading is the sum of two of them.</summary>
internal sealed class WindingBalanceSource : IReadingSource
{
    public string Calculation => "winding-balance";

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        double nominal = setup.Si("nominal") ?? setup.Between(0.8, 25), off = setup.Si("nominal-tolerance") ?? 0.2;
        double limit = setup.Given("limit");
        return condition switch
        {
            VerdictKind.Within => Star(nominal * setup.Inside(1 - off, 1 + off), 1 + 0.5 * limit),
            VerdictKind.Low => Star(nominal * (1 - 1.8 * off), 1),
            VerdictKind.High => Star(nominal * (1 + 1.8 * off), 1),
            VerdictKind.Unequal => Star(nominal, 1 - Math.Max(4 * limit, setup.Between(0.2, 0.4))),
            VerdictKind.OpenCircuit => [TrueReading.Open, TrueReading.Of(nominal), TrueReading.Open],
            VerdictKind.ShortCircuit =>
                [TrueReading.Of(0.001 * nominal), TrueReading.Of(nominal), TrueReading.Of(nominal)],
            _ => [],
        };
    }

    // The third winding is another than the first two.
    private static ImmutableArray<TrueReading> Star(double ohms, double third) =>
    [
        TrueReading.Of(ohms), TrueReading.Of(ohms / 2 * (1 + third)), TrueReading.Of(ohms / 2 * (1 + third)),
    ];
}
