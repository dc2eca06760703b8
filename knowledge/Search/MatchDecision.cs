namespace DxAssistant.Knowledge.Search;

/// <summary>What a message comes to.</summary>
public enum MatchDecision
{
    /// <summary>One fault fits and no other comes near.</summary>
    Fault,
    /// <summary>Several faults fit.</summary>
    Choices,
    /// <summary>It is of this trade, and too little is said to name faults.</summary>
    Clarify,
    /// <summary>It is none of this trade's business.</summary>
    None,
    /// <summary>It asks for something dangerous.</summary>
    Refuse,
}
