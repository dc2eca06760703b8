namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>A page and how well it fits; better ones stand before worse ones, and of equals the first page.</summary>
internal readonly record struct ScoredPage(int Page, double Score) : IComparable<ScoredPage>
{
    public int CompareTo(ScoredPage other) =>
        Score != other.Score ? other.Score.CompareTo(Score) : Page.CompareTo(other.Page);
}
