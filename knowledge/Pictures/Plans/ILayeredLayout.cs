namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Places boxes in columns so that the lines between them cross little.</summary>
public interface ILayeredLayout
{
    /// <summary>The middle of each box, by its id; the same boxes and lines give the same places.</summary>
    /// <param name="boxes">In an order that decides between ways equally good.</param>
    /// <param name="lines">From a box to one further right.</param>
    IReadOnlyDictionary<string, (double X, double Y)> Place(IReadOnlyList<LayoutBox> boxes,
        IReadOnlyList<LayoutLine> lines);
}
