using CsCheck;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class EditCostTests
{
    private static readonly Gen<string> Words = Gen.Char['a', 'z'].Array[1, 9].Select(letters => new string(letters));

    [Theory]
    [InlineData("capasitor", "capacitor", "capabitor")] // s sounds like c
    [InlineData("drsin", "drain", "drpin")] // s lies beside a
    [InlineData("jamed", "jammed", "jabmed")] // one letter of a double lost
    [InlineData("fna", "fan", "fbn")] // two letters changed places
    public void Between_CommonSlip_CostsLessThanAStrayLetter(string slip, string right, string stray) =>
        Assert.True(EditCost.Between(slip, right) < EditCost.Between(stray, right));

    // CsCheck prints the seed of a failing case.
    [Fact]
    public void Between_SameWord_CostsNothing() => Words.Sample(word => EditCost.Between(word, word) == 0);

    [Fact]
    public void Between_TwoWords_CostsTheSameBothWays() =>
        Gen.Select(Words, Words)
            .Sample((one, other) => Math.Abs(EditCost.Between(one, other) - EditCost.Between(other, one)) < 1e-9);
}
