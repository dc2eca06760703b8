using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Knowledge.Tests.Exchange;

public sealed class RoundedSharesTests
{
    // By hand: each third loses a third of the last digit, and the one digit left over goes to the first of those that
    // lost alike.
    [Fact]
    public void Of_Thirds_GivesTheDigitLeftOverToTheFirst() =>
        Assert.Equal<double>([0.333333334, 0.333333333, 0.333333333], RoundedShares.Of([1, 1, 1]));

    [Fact]
    public void Of_SharesThatHaveNineDigits_LeavesThem() =>
        Assert.Equal<double>([0.895522388, 0.052238806, 0.052238806],
            RoundedShares.Of([0.895522388, 0.052238806, 0.052238806]));

    // The digits are added as decimals, which add exactly.
    [Fact]
    public void Of_AnyRow_SumsToOneToTheDigitAndStaysSo()
    {
        Draws draws = new(7);
        for (int row = 0; row < 2_000; row++)
        {
            ImmutableArray<double> rounded =
                RoundedShares.Of([.. Enumerable.Range(0, 2 + row % 7).Select(_ => 0.001 + draws.NextShare())]);
            Assert.Equal(1,
                rounded.Sum(share => decimal.Parse(share.ToString("0.#########", CultureInfo.InvariantCulture),
                    CultureInfo.InvariantCulture)));
            Assert.Equal<double>(rounded, RoundedShares.Of(rounded));
        }
    }
}
