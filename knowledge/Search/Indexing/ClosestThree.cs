namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>The scores of the three closest wordings of a page; 0 where it has fewer.</summary>
internal record struct ClosestThree(double First, double Second, double Third)
{
    public void Offer(double score)
    {
        if (score <= Third)
            return;
        if (score > First)
            (First, Second, Third) = (score, First, Second);
        else if (score > Second)
            (Second, Third) = (score, Second);
        else
            Third = score;
    }
}
