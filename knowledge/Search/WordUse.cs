namespace DxAssistant.Knowledge.Search;

/// <summary>How much each page uses one word.</summary>
/// <param name="rarity">How telling the word is.</param>
internal sealed class WordUse(double rarity)
{
    private readonly Dictionary<int, double> byPage = [];

    public double Rarity { get; } = rarity;

    public double Total { get; private set; }

    public void Add(int page, double share)
    {
        byPage[page] = In(page) + share;
        Total += share;
    }

    public double In(int page) => byPage.GetValueOrDefault(page);
}
