namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>What a search entry stands for.</summary>
public enum NodeKind
{
    Symptom,
    Fault,
    Check,
    /// <summary>An unsafe request that gets a refusal.</summary>
    Refusal,
    /// <summary>Talk that is none of this trade's.</summary>
    OffTopic,
    /// <summary>Talk in the words of a danger that asks for nothing dangerous.</summary>
    Harmless,
    Series,
}
