namespace DxAssistant.Knowledge.Content.Model;

/// <summary>What a sign of danger tells of, which decides what is to be done at once; the most urgent first.</summary>
public enum DangerKind
{
    /// <summary>Gas that may be in the air: no switch is touched, no flame lit.</summary>
    Gas,

    /// <summary>Heat, smoke, sparks or flames.</summary>
    Fire,

    /// <summary>Metal that may be live.</summary>
    Shock,

    /// <summary>Water that may be live.</summary>
    Water,
}
