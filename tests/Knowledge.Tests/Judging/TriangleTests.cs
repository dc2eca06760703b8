using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>Three lengths as a triangle, and zones of a reading that is known exactly.</summary>
public sealed class TriangleTests
{
    // Source: Euclid, Elements I.47 and I.20: 3, 4, 5 has a right angle, 2, 2, 2 is 2 cos 30° high, two sides together
    // are not shorter than the third.
    [Theory]
    [InlineData(4, 5, 3, 0, 3)]
    [InlineData(3, 5, 4, 0, 4)]
    [InlineData(5, 4, 3, 1.8, 2.4)]
    [InlineData(2, 2, 2, 1, 1.7320508)]
    [InlineData(4, 3, 3, 2, 2.2360680)]
    [InlineData(2, 1, 1, 1, 0)]
    [InlineData(1, 1, 2, 2, 0)]
    public void Of_ThreeSides_HasItsThirdCorner(double ab, double bc, double ca, double x, double y)
    {
        Triangle triangle = Triangle.Of(ab, bc, ca)!;
        Assert.Equal(ab, triangle.Base, 1e-9);
        Assert.Equal(x, triangle.Apex.X, 1e-6);
        Assert.Equal(y, triangle.Apex.Y, 1e-6);
    }

    // Common practice, no source: 3 % may have moved between one reading and the next; of a base of nothing no triangle
    // is drawn.
    [Theory]
    [InlineData(2.05, 1, 1, true)]
    [InlineData(2.2, 1, 1, false)]
    [InlineData(1, 2.2, 1, false)]
    [InlineData(1, 1, 2.2, false)]
    [InlineData(0, 1, 1, false)]
    [InlineData(0.01, 1, 1, false)]
    [InlineData(0.1, 1, 1, true)]
    [InlineData(0, 0, 0, false)]
    public void Of_SidesThatDoNotClose_IsNone(double ab, double bc, double ca, bool closes) =>
        Assert.Equal(closes, Triangle.Of(ab, bc, ca) is not null);

    // Definition: low is below its limit, within ends at its own, both without doubt when the reading has none.
    [Theory]
    [InlineData(9.99, VerdictKind.Low)]
    [InlineData(10, VerdictKind.Within)]
    [InlineData(15, VerdictKind.Within)]
    [InlineData(20, VerdictKind.Within)]
    [InlineData(20.01, VerdictKind.High)]
    public void Zone_ReadingWithoutDoubt_IsInOne(double value, VerdictKind expected)
    {
        var weights = Zone.Weigh(value, 0, Zone.LowBelow(10), Zone.WithinUpTo(20), Zone.Above(VerdictKind.High));
        Assert.Equal(1, weights[expected]);
        Assert.All(weights.Where(pair => pair.Key != expected), pair => Assert.Equal(0, pair.Value));
    }

    // Source: tables of the normal distribution, Φ(1) = 0.8413, Φ(2) = 0.9772 (from memory): one and two standard
    // uncertainties off.
    [Fact]
    public void Zone_ReadingWithDoubt_IsSharedOut()
    {
        var weights = Zone.Weigh(11, 1, Zone.LowBelow(10), Zone.WithinUpTo(13), Zone.Above(VerdictKind.High));
        Assert.Equal(1 - 0.8413, weights[VerdictKind.Low], 1e-4);
        Assert.Equal(0.8413 + 0.9772 - 1, weights[VerdictKind.Within], 1e-4);
        Assert.Equal(1 - 0.9772, weights[VerdictKind.High], 1e-4);
    }
}
