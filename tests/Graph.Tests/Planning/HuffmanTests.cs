using DxAssistant.Graph.Planning.Search;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class HuffmanTests
{
    // Sources: textbook example of weights 45, 13, 12, 16, 9, 5 (2.24 letters of two); eight equal weights need 3
    // letters of two; nine equal weights need 2 letters of three.
    [Theory]
    [InlineData(new[] { 0.45, 0.13, 0.12, 0.16, 0.09, 0.05 }, 2, 2.24)]
    [InlineData(new[] { 0.125, 0.125, 0.125, 0.125, 0.125, 0.125, 0.125, 0.125 }, 2, 3)]
    [InlineData(new[] { 1.0, 1, 1, 1, 1, 1, 1, 1, 1 }, 3, 18)]
    [InlineData(new[] { 0.25, 0.25, 0.25, 0.25 }, 3, 1.5)]
    [InlineData(new[] { 1.0 }, 2, 0)]
    public void ExpectedLength_KnownCodes_AreMet(double[] weights, int letters, double expected) =>
        Assert.Equal(expected, Huffman.ExpectedLength(weights, letters), 1e-12);
}
