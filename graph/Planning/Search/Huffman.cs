namespace DxAssistant.Graph.Planning.Search;

/// <summary>Huffman's code (Proc. IRE 40, 1952): the fewest questions, on average, that tell the items apart.</summary>
internal static class Huffman
{
    /// <summary>Expected number of letters of the best code.</summary>
    /// <param name="weights">Above 0; sorted and overwritten.</param>
    /// <param name="letters">Answers to a question; 2 or more.</param>
    public static double ExpectedLength(Span<double> weights, int letters)
    {
        int count = weights.Length;
        double length = 0;
        // The first question may have fewer answers, so that all later ones have the full number.
        int take = count <= 1 ? 0 : (count - 2) % (letters - 1) + 2;
        while (count > 1)
        {
            weights[..count].Sort();
            double merged = 0;
            for (int item = 0; item < take; item++) merged += weights[item];
            length += merged;
            weights[take - 1] = merged;
            weights = weights[(take - 1)..];
            count -= take - 1;
            take = letters;
        }

        return length;
    }
}
